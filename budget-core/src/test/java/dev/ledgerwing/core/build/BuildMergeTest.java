package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BuildMergeTest {

    private final Build base = Builds.small();

    @Test
    void mergesChangesInDifferentFieldsOfOnePart() {
        Build theirs = edit("L001", line -> line.withMass(LineMass.of(Mass.ofGrams(99), Basis.WEIGHED)));
        Build mine = edit("L001", line -> line.withPlace(LinePlace.at(Station.atX(Length.ofMm(210)))));

        Build merged = BuildMerge.merge(base, theirs, mine).build().orElseThrow();

        PartLine spar = merged.line("L001").orElseThrow();
        assertThat(spar.mass().unitMass()).isEqualTo(Mass.ofGrams(99));
        assertThat(spar.place().station()).isEqualTo(Station.atX(Length.ofMm(210)));
    }

    @Test
    void mergesTheFieldsOfAGroupOneByOne() {
        Build theirs = edit("L001", line -> line.withPlace(LinePlace.at(Station.atX(Length.ofMm(210)))));
        Build mine = edit("L001", line -> line.withPlace(new LinePlace(null, Length.ofMm(2), null, null, null, null)));

        LinePlace place = BuildMerge.merge(base, theirs, mine)
                .build()
                .orElseThrow()
                .line("L001")
                .orElseThrow()
                .place();

        assertThat(place.station()).isEqualTo(Station.atX(Length.ofMm(210)));
        assertThat(place.stationUncertainty()).isEqualTo(Length.ofMm(2));
    }

    @Test
    void aMassAndItsBasisAreOneStatementAndClash() {
        Build theirs = edit("L001", line -> line.withMass(LineMass.of(Mass.ofGrams(99), Basis.WEIGHED)));
        Build mine = edit("L001", line -> line.withMass(LineMass.of(Mass.ofGrams(130), Basis.GUESSED)));

        assertThat(BuildMerge.merge(base, theirs, mine).conflicts())
                .containsExactly(new Conflict("part “Spar”", "mass", "set differently on both sides"));
    }

    @Test
    void removedHereAndEditedThereIsAConflict() {
        Build theirs = base.withLines(base.lines().subList(1, 3));
        Build mine = edit("L001", line -> line.withMass(LineMass.of(Mass.ofGrams(99), Basis.WEIGHED)));

        assertThat(BuildMerge.merge(base, theirs, mine).conflicts())
                .containsExactly(new Conflict("part “Spar”", "", "removed on one side and changed on the other"));
        assertThat(BuildMerge.merge(base, mine, theirs).conflicts()).hasSize(1);
    }

    @Test
    void namesTheReferenceThatAMergeWouldBreak() {
        Build theirs = base.withLines(base.lines().subList(0, 2))
                .withAssemblies(base.assemblies().subList(0, 1));
        List<PartLine> lines = new ArrayList<>(base.lines());
        lines.add(Builds.line("L009", "nose", "Lamp", Category.PAYLOAD, 1, LineMass.notKnown()));

        assertThat(BuildMerge.merge(base, theirs, base.withLines(lines)).conflicts())
                .containsExactly(new Conflict("the record", "lines[2].assembly", "there is no assembly “nose”"));
    }

    @Test
    void theSameChangeOnBothSidesIsNoConflict() {
        Build both = edit("L001", line -> line.withMass(LineMass.of(Mass.ofGrams(99), Basis.WEIGHED)));

        assertThat(BuildMerge.merge(base, both, both).build()).contains(both);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void disjointChangesGiveTheSameEitherWay(long seed) {
        for (int round = 0; round < 40; round++) {
            Random random = new Random(seed * 100 + round);
            Build start = Builds.seeded(seed * 100 + round);
            Build even = someLinesChanged(start, random, 0);
            Build odd = someLinesChanged(start, random, 1);

            Build one = BuildMerge.merge(start, even, odd).build().orElseThrow();
            Build other = BuildMerge.merge(start, odd, even).build().orElseThrow();

            assertThat(one).isEqualTo(other);
            assertThat(BuildChange.between("merged", Nature.FITTED, even, one).applyTo(even))
                    .isEqualTo(one);
        }
    }

    /** Changes, removes and adds among the lines whose number has this parity. */
    private static Build someLinesChanged(Build build, Random random, int parity) {
        List<PartLine> lines = new ArrayList<>();
        for (int i = 0; i < build.lines().size(); i++) {
            PartLine line = build.lines().get(i);
            boolean referred = build.loadCases().stream()
                            .anyMatch(loadCase -> loadCase.absent().contains(line.id())
                                    || loadCase.moved().containsKey(line.id()))
                    || build.bays().stream().anyMatch(bay -> bay.holds().contains(line.id()));
            int what = i % 2 == parity ? random.nextInt(4) : 3;
            if (what != 0 || referred) {
                lines.add(what == 1 ? Builds.seededLine(random, line.id(), line.assembly()) : line);
            }
            if (random.nextInt(4) == 0) {
                String id = "N" + parity + "-" + random.nextInt(1_000_000);
                lines.add(
                        Builds.seededLine(random, id, build.assemblies().get(0).code()));
            }
        }
        return build.withLines(lines);
    }

    private Build edit(String id, UnaryOperator<PartLine> edit) {
        return base.withLines(base.lines().stream()
                .map(line -> line.id().equals(id) ? edit.apply(line) : line)
                .toList());
    }
}
