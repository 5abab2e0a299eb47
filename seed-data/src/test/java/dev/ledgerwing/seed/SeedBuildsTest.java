package dev.ledgerwing.seed;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SeedBuildsTest {

    static List<SeedAirframe> airframes() {
        return SeedFleet.airframes();
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void everyRecordIsAboutItsAirframe(SeedAirframe airframe) {
        assertThat(builds(airframe))
                .extracting(build -> build.airframe().code())
                .containsOnly(airframe.code());
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void theBuildGrowsToAFullLedger(SeedAirframe airframe) {
        List<Build> builds = builds(airframe);

        assertThat(builds.get(0).lines()).hasSizeLessThan(20);
        assertThat(airframe.last().build().lines()).hasSizeBetween(45, 90);
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void stagesOnlyMoveOn(SeedAirframe airframe) {
        assertThat(builds(airframe))
                .extracting(build -> build.airframe().stage())
                .isSorted();
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void anIdThatIsGoneNeverComesBack(SeedAirframe airframe) {
        Set<String> seen = new HashSet<>();
        Set<String> before = Set.of();
        List<String> returned = new ArrayList<>();
        for (Build build : builds(airframe)) {
            Set<String> now = new HashSet<>(ids(build));
            for (String id : now) {
                if (seen.contains(id) && !before.contains(id)) {
                    returned.add(id);
                }
            }
            seen.addAll(now);
            before = now;
        }
        assertThat(returned).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void everyRevisionChangesSomethingAndTheDifferenceLeadsToIt(SeedAirframe airframe) {
        Build before = builds(airframe).get(0);
        for (SeedRevision revision : airframe.revisions().subList(1, 12)) {
            Build after = revision.build();
            BuildChange change = BuildChange.between(revision.reason(), Nature.FITTED, before, after);

            assertThat(change.isEmpty()).as(revision.reason()).isFalse();
            assertThat(change.applyTo(before)).isEqualTo(after);
            before = after;
        }
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void everyPartHasAMassAndAStationInTheEnd(SeedAirframe airframe) {
        assertThat(airframe.last().build().lines())
                .allMatch(PartLine::isMassKnown)
                .allMatch(line -> line.place().station() != null);
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void everyFunctionDependsOnAPart(SeedAirframe airframe) {
        Build build = airframe.last().build();
        Set<String> served = new HashSet<>();
        build.lines().forEach(line -> served.addAll(line.serves()));

        assertThat(build.radio().functions())
                .extracting(RadioFunction::code)
                .containsExactlyInAnyOrderElementsOf(served);
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void everyLoadSaysWhatItDrawsAndStandsItsRail(SeedAirframe airframe) {
        Build build = airframe.last().build();
        List<ElectricalLoad> loads = build.lines().stream()
                .flatMap(line -> line.electrical().stream())
                .toList();

        assertThat(loads)
                .isNotEmpty()
                .allSatisfy(load -> assertThat(build.power().rails())
                        .filteredOn(rail -> rail.code().equals(load.rail()))
                        .singleElement()
                        .satisfies(rail -> {
                            assertThat(load.peakA()).isGreaterThanOrEqualTo(load.typicalA());
                            assertThat(load.minV()).isLessThanOrEqualTo(rail.minV());
                            assertThat(load.maxV()).isGreaterThanOrEqualTo(rail.maxV());
                        }));
    }

    @Test
    void noPieceIsInTwoAirframes() {
        List<String> pieces = airframes().stream()
                .flatMap(airframe -> airframe.last().build().lines().stream())
                .flatMap(line -> line.supply().serials().stream())
                .toList();

        assertThat(pieces).hasSizeGreaterThan(20).doesNotHaveDuplicates();
    }

    private static List<Build> builds(SeedAirframe airframe) {
        return airframe.revisions().stream().map(SeedRevision::build).toList();
    }

    private static List<String> ids(Build build) {
        return build.lines().stream().map(PartLine::id).toList();
    }
}
