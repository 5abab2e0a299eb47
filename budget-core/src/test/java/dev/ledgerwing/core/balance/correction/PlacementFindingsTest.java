package dev.ledgerwing.core.balance.correction;

import static dev.ledgerwing.core.balance.correction.Trims.between;
import static dev.ledgerwing.core.balance.correction.Trims.part;
import static dev.ledgerwing.core.balance.correction.Trims.sized;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PlacementFindingsTest {

    private static final PartLine COMPASS = sized(part("compass", 20, 500), 40, 30, 10);
    private static final PartLine MOTOR = sized(part("motor", 200, 300), 60, 40, 40);

    private static Build apart(double atLeastMm, PartLine... lines) {
        return between(300, 400, lines)
                .withKeepApart(List.of(
                        new KeepApart("K1", "Compass clear of the motor", "compass", "motor", Length.ofMm(atLeastMm))));
    }

    private static Build inBay(PartLine line) {
        return between(300, 400, line).withBays(List.of(bay("b", 200, 400, line.id())));
    }

    private static Bay bay(String code, double fromMm, double toMm, String holds) {
        return new Bay(
                code,
                "Bay " + code,
                Length.ofMm(fromMm),
                Length.ofMm(toMm),
                Length.ofMm(-40),
                Length.ofMm(40),
                null,
                null,
                List.of(holds));
    }

    private static PartLine at(PartLine line, double x, double y, double z) {
        LinePlace place = line.place();
        return line.withPlace(new LinePlace(
                new Station(Length.ofMm(x), Length.ofMm(y), Length.ofMm(z)),
                null,
                place.stowedStation(),
                place.travel(),
                place.size(),
                place.mirroredAtY()));
    }

    private static PartLine without(PartLine line, LinePlace.@Nullable Size size) {
        return line.withPlace(new LinePlace(line.place().station(), null, null, null, size, null));
    }

    private static Finding only(Build build) {
        List<Finding> findings = PlacementFindings.of(build, Figures.METRIC);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    private static LoadCase moved(String id, Station station) {
        return new LoadCase(
                "ferry", "Ferry", Purpose.FLIGHT, false, List.of(), Map.of(id, station), List.of(), List.of());
    }

    /** By derivation: stations 200 mm apart, half lengths of 20 and 30 mm: 150 mm between the boxes. */
    @Test
    void distancesAreMeasuredBetweenBoxes() {
        Finding holds = only(apart(150, COMPASS, MOTOR));
        assertThat(holds.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(holds.measured()).isEqualTo(150.0);
        Finding breaks = only(apart(151, COMPASS, MOTOR));
        assertThat(breaks.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(breaks.marginLeft()).isEqualTo(-1.0);
        assertThat(Said.sentence(breaks))
                .isEqualTo("“Part compass” and “Part motor” are 150 mm apart, wanted are 151 mm at least.");
    }

    /** By derivation: boxes 30 mm apart in x, 40 mm in y, 0 in z: 50 mm. */
    @Test
    void distancesAreMeasuredInSpace() {
        Build build = apart(50, at(COMPASS, 380, 75, 0), at(MOTOR, 300, 0, 0));
        assertThat(only(build).measured()).isEqualTo(50.0);
    }

    @Test
    void withoutBothSizesStationsAreMeasured() {
        Finding finding = only(apart(150, COMPASS, without(MOTOR, null)));
        assertThat(finding.measured()).isEqualTo(200.0);
        assertThat(Said.sentence(finding)).contains("200 mm apart between their stations");
    }

    @Test
    void aMirroredPartIsTwoBoxes() {
        LinePlace mirrored = new LinePlace(
                COMPASS.place().station(), null, null, null, COMPASS.place().size(), Length.ofMm(90));
        PartLine pair = PartLine.named(
                        COMPASS.id(), COMPASS.assembly(), COMPASS.name(), COMPASS.category(), 2, COMPASS.mass())
                .withPlace(mirrored);
        PartLine motor = at(MOTOR, 500, -190, 0);
        // the left one at y = -90: 100 mm between stations, less 15 and 20 mm
        assertThat(only(apart(10, pair, motor)).measured()).isEqualTo(65.0);
    }

    @Test
    void theWorstCaseIsNamed() {
        Build build = Ledgers.withCases(apart(100, COMPASS, MOTOR), moved("compass", Trims.at(400)));
        Finding finding = only(build);
        assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(Said.sentence(finding)).contains("50 mm apart in “Ferry”");
    }

    @Test
    void whatStaysAtHomeBreaksNothing() {
        Build build = apart(500, COMPASS, MOTOR).withLoadCases(List.of(Ledgers.designCase(List.of("motor"))));
        assertThat(PlacementFindings.of(build, Figures.METRIC)).isEmpty();
    }

    @Test
    void whereAPartSitsIsNotGuessed() {
        PartLine nowhere = MOTOR.withPlace(LinePlace.UNKNOWN);
        Finding finding = only(apart(100, COMPASS, nowhere));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(finding.measured()).isNull();
        assertThat(finding.sentence()).contains("is not known");
    }

    @Test
    void aPartInItsBayHolds() {
        Finding finding = only(inBay(sized(part("pack", 800, 300), 160, 60, 40)));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.line()).isEqualTo("pack");
        assertThat(finding.marginLeft()).as("10 mm to either side is the least").isEqualTo(10.0);
    }

    @Test
    void aPartThatSticksOutBreaks() {
        Finding finding = only(inBay(sized(part("pack", 800, 270), 160, 60, 40)));
        assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(Said.sentence(finding)).isEqualTo("“Part pack” sticks 10 mm out of “Bay b”.");
        assertThat(only(inBay(sized(part("pack", 800, 300), 160, 90, 40))).verdict())
                .as("too wide")
                .isEqualTo(Verdict.BREAKS);
    }

    @Test
    void withoutASizeNobodyKnowsWhetherItFits() {
        assertThat(only(inBay(part("pack", 800, 300))).verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(only(inBay(part("pack", 800, 150))).verdict())
                .as("its station is outside")
                .isEqualTo(Verdict.BREAKS);
    }

    @Test
    void aPartOfTwoBaysIsSpokenOfOnce() {
        PartLine pack = sized(part("pack", 800, 300), 160, 60, 40);
        Build build = between(300, 400, pack).withBays(List.of(bay("a", 100, 500, "pack"), bay("b", 250, 400, "pack")));
        assertThat(Said.sentence(only(build))).isEqualTo("“Part pack” sticks 30 mm out of “Bay b”.");
    }
}
