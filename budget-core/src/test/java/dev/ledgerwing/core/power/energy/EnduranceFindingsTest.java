package dev.ledgerwing.core.power.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 5 Ah, of which 4 Ah may be used, and 2 A: 120 min, 5 of them kept for the landing. */
class EnduranceFindingsTest {

    private static final List<Phase> CRUISE = List.of(Flights.stretching("cruise"));

    @ParameterizedTest
    @CsvSource({"104, HOLDS", "105, TIGHT", "115, TIGHT", "116, BREAKS"})
    void holdsTheFlightAgainstWhatIsWanted(double wantedMinutes, Verdict verdict) {
        Finding finding = only(Flights.wanting(wantedMinutes, 5, cruising()));
        assertThat(finding.code()).isEqualTo("power.endurance");
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.measured()).isCloseTo(115, within(1e-9));
        assertThat(finding.limit()).isEqualTo(wantedMinutes);
        assertThat(finding.marginLeft()).isCloseTo(115 - wantedMinutes, within(1e-9));
    }

    @Test
    void saysWhatHolds() {
        says(
                Flights.wanting(60.0, 5, cruising()),
                Verdict.HOLDS,
                "It flies 115 min until “Pack one” holds only 5 min of “Phase cruise” for the landing; 60 min are wanted.");
    }

    @Test
    void saysWhatIsTight() {
        says(
                Flights.wanting(110.0, 5, cruising()),
                Verdict.TIGHT,
                "It flies 115 min until “Pack one” holds only 5 min of “Phase cruise” for the landing; 110 min are wanted:"
                        + " less than 10 % more than that.");
    }

    @Test
    void saysHowMuchIsWanting() {
        says(
                Flights.wanting(120.0, 5, cruising()),
                Verdict.BREAKS,
                "It flies 115 min until “Pack one” holds only 5 min of “Phase cruise” for the landing; 120 min are wanted,"
                        + " 5 min more.");
    }

    @Test
    void holdsWithoutAWish() {
        says(
                cruising(),
                Verdict.HOLDS,
                "It flies 115 min until “Pack one” holds only 5 min of “Phase cruise” for the landing. How long it shall"
                        + " last is not said.");
    }

    @Test
    void breaksWhereTheFixedPhasesDoNotFit() {
        says(
                Flights.onePack(
                        Flights.pack("one", 500.0),
                        List.of(Flights.fixed("climb", 10.0), CRUISE.get(0)),
                        Flights.load("board", "main", 2.0, Map.of())),
                Verdict.BREAKS,
                "“Pack one” does not hold the fixed phases, 10 min in all, and 5 min of “Phase cruise” for the landing:"
                        + " that much is left in it after 7 min already.");
    }

    @Test
    void breaksWhereThePackHoldsLessThanTheLanding() {
        says(
                Flights.onePack(Flights.pack("one", 100.0), CRUISE, Flights.load("board", "main", 2.0, Map.of())),
                Verdict.BREAKS,
                "“Pack one” holds less than 5 min of “Phase cruise” for the landing.");
    }

    @Test
    void saysSoWhereNoPhaseStretches() {
        says(
                fiveAh(List.of(Flights.fixed("climb", 10.0)), 2.0),
                Verdict.HOLDS,
                "The phases last 10 min in all, and “Pack one” holds them and 5 min for the landing. How long it shall last"
                        + " is not said.");
    }

    @Test
    void saysHoursWhereNoPhasesAreRecorded() {
        says(
                fiveAh(List.of(), 1.0),
                Verdict.HOLDS,
                "With everything on all the time it lasts 3.9 h until “Pack one” holds only 5 min for the landing. How long"
                        + " it shall last is not said.");
    }

    @Test
    void isNotKnownWhereSomethingIsMissing() {
        says(
                Flights.onePack(Flights.pack("one", null), CRUISE, Flights.load("board", "main", null, Map.of())),
                Verdict.UNKNOWN,
                "How long it flies is not known: enter what “Part board” draws.");
    }

    @Test
    void isNotKnownWhereNothingDraws() {
        says(fiveAh(CRUISE, 0.0), Verdict.UNKNOWN, "How long it flies is not known: nothing draws on a pack yet.");
    }

    @Test
    void isNotKnownWhereThePhaseThatStretchesDrawsNothing() {
        says(
                Flights.onePack(
                        Flights.pack("one", 5000.0),
                        List.of(Flights.fixed("climb", 10.0), CRUISE.get(0)),
                        Flights.load("board", "main", 2.0, Map.of("cruise", 0.0))),
                Verdict.UNKNOWN,
                "How long it flies is not known: nothing draws on a pack in the phase that stretches.");
    }

    @Test
    void isNotKnownWhereASourceGivesWay() {
        FeedElement resistance =
                new FeedElement("Long leads", Kind.CONNECTOR, null, null, 1, null, 1000.0, null, null, null, null);
        PartLine motor = Flights.drawing(
                "motor",
                new ElectricalLoad("main", Draws.CONSTANT_POWER, 10.0, 10.0, null, null, Map.of(), null, null));
        Build build = Flights.onePack(Flights.pack("one", 5000.0), CRUISE, motor)
                .withFeeds(List.of(Flights.feed("one", "main", resistance)));
        says(
                build,
                Verdict.UNKNOWN,
                "How long it flies is not known: a source cannot give what is asked of it on the way.");
    }

    @Test
    void saysNothingWhereThereIsNoPackAndNothingIsWanted() {
        Build bench = cruising().withSources(List.of(PowerSource.external("one", "Bench", 11.1, 5.0)));
        assertThat(findings(bench)).isEmpty();
        assertThat(only(Flights.wanting(30.0, 5, bench)).verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    private static void says(Build build, Verdict verdict, String sentence) {
        Finding finding = only(build);
        assertThat(Said.sentence(finding)).isEqualTo(sentence);
        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    private static Finding only(Build build) {
        assertThat(findings(build)).hasSize(1);
        return findings(build).get(0);
    }

    private static List<Finding> findings(Build build) {
        return EnduranceFindings.of(
                build, PowerEnergy.of(PowerNetwork.of(build)).endurance());
    }

    private static Build cruising() {
        return fiveAh(CRUISE, 2.0);
    }

    private static Build fiveAh(List<Phase> phases, @Nullable Double typicalA) {
        return Flights.onePack(Flights.pack("one", 5000.0), phases, Flights.load("board", "main", typicalA, Map.of()));
    }
}
