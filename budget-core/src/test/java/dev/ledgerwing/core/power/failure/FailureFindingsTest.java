package dev.ledgerwing.core.power.failure;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.redundant;
import static dev.ledgerwing.core.power.Supplies.resistance;
import static dev.ledgerwing.core.power.failure.Failures.AILERON;
import static dev.ledgerwing.core.power.failure.Failures.CAMERA;
import static dev.ledgerwing.core.power.failure.Failures.ELEVATOR;
import static dev.ledgerwing.core.power.failure.Failures.receiver;
import static dev.ledgerwing.core.power.failure.Failures.serving;
import static dev.ledgerwing.core.power.failure.Failures.several;
import static dev.ledgerwing.core.power.failure.Failures.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class FailureFindingsTest {

    private static final PartLine RECEIVER = serving(receiver("receiver", "avionics", 2, 5.2), AILERON, ELEVATOR);

    private static List<Finding> twoLegs(Rail avionics, double secondV, PartLine line) {
        return FailureFindings.of(table(
                List.of(bench("first", 6.0), bench("second", secondV)),
                List.of(avionics),
                List.of(
                        feed("first", "avionics", fuse(10), diode(0.4)),
                        feed("second", "avionics", fuse(10), resistance(50), diode(0.4))),
                line));
    }

    @Test
    void breaksWhereARedundantRailDoesNotBearALegGone() {
        List<Finding> findings = twoLegs(redundant("avionics", 5, 4, 10), 5.6, RECEIVER);

        assertThat(findings)
                .filteredOn(finding -> finding.verdict() == Verdict.BREAKS)
                .extracting(Said::sentence)
                .containsExactlyInAnyOrder(
                        "“Bench first” gives nothing: “Rail avionics” must bear any single failure, but falls from 5.6 V to"
                                + " 5.1 V (all the time), too little for “Part receiver”.",
                        "Each of “Diode of 0.4 V” and “FUSE of 10.0 A” in “Feed first to avionics” that fails open: “Rail"
                                + " avionics” must bear any single failure, but falls from 5.6 V to 5.1 V (all the"
                                + " time), too little for “Part receiver”.");
        assertThat(findings).allMatch(finding -> finding.code().equals("power.single-failure"));
    }

    @Test
    void holdsWhereEitherLegIsEnough() {
        List<Finding> findings = twoLegs(redundant("avionics", 5, 4, 10), 5.9, RECEIVER);

        assertThat(findings.get(0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(findings.get(0).sentence())
                .isEqualTo("“Rail avionics” bears any single failure but a short of its own.");
    }

    /** A short of the rail itself is left, which no second leg helps against. */
    @Test
    void sumsUpWhatTakesTheFlight() {
        List<Finding> findings = twoLegs(redundant("avionics", 5, 4, 10), 5.9, RECEIVER);

        assertThat(findings).hasSize(2);
        assertThat(findings.get(1).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(findings.get(1).sentence())
                .isEqualTo("1 of 8 single failures takes a function that the flight hangs on. “Rail avionics” is"
                        + " shorted: “Aileron” and “Elevator” are lost.");
    }

    @Test
    void sumsUpInOneFindingWhatTakesTheFlightFromAPlainRail() {
        List<Finding> findings = twoLegs(rail("avionics", 5), 5.6, RECEIVER);

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
            assertThat(finding.sentence())
                    .startsWith("4 of 8 single failures take a function that the flight hangs on.");
        });
    }

    @Test
    void doesNotKnowWhatIsLostWhereNoPartSaysWhatItServes() {
        List<Finding> findings = twoLegs(rail("avionics", 5), 5.6, receiver("receiver", "avionics", 2, 5.2));

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
            assertThat(finding.sentence()).contains("no part that is fed says which functions it serves");
        });
    }

    @Test
    void doesNotKnowWhereNothingFedServesTheFlight() {
        List<Finding> findings =
                twoLegs(rail("avionics", 5), 5.6, serving(receiver("camera", "avionics", 2, 5.2), CAMERA));

        assertThat(findings)
                .singleElement()
                .satisfies(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN));
    }

    @Test
    void doesNotCallARailInACircleRedundant() {
        List<Finding> findings = FailureFindings.of(table(
                List.of(bench("pack", 6)),
                List.of(redundant("avionics", 5, 4, 10), rail("round", 5)),
                List.of(
                        feed("pack", "avionics", fuse(10)),
                        feed("avionics", "round", fuse(10)),
                        feed("round", "avionics", fuse(10))),
                RECEIVER));

        assertThat(findings).extracting(Finding::verdict).containsOnly(Verdict.UNKNOWN);
    }

    @Test
    void saysNothingOfASupplyInWhichNothingHangs() {
        assertThat(FailureFindings.of(table(List.of(), List.of(), List.of()))).isEmpty();
        assertThat(FailureFindings.of(table(
                        List.of(bench("pack", 6)),
                        List.of(rail("avionics", 5)),
                        List.of(feed("pack", "avionics", fuse(10))))))
                .isEmpty();
    }

    private static List<Finding> twoFuses(Rail avionics) {
        Feed feed = feed("pack", "avionics", several(Kind.FUSE, 2, Sharing.OWN_BRANCH, 5));
        return FailureFindings.of(table(
                        List.of(bench("pack", 12)),
                        List.of(avionics),
                        List.of(feed),
                        serving(receiver("receiver", "avionics", 8, 9), AILERON)))
                .stream()
                .filter(finding -> finding.code().equals("power.failure-overload"))
                .toList();
    }

    @Test
    void tellsWhatIsOverloadedOnlyOnceSomethingHasFailed() {
        assertThat(twoFuses(rail("avionics", 12))).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
            assertThat(Said.sentence(finding))
                    .isEqualTo(
                            "The fuse “Several” in “Feed pack to avionics”, one of 2, fails open: “Several” must then"
                                    + " carry 8 A, rated 5 A.");
            assertThat(finding.measured()).isCloseTo(8, within(1e-9));
            assertThat(finding.marginLeft()).isCloseTo(-3, within(1e-9));
        });
    }

    @Test
    void breaksOnAnOverloadThatARedundantRailHangsOn() {
        assertThat(twoFuses(redundant("avionics", 12, 9, 15)))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.BREAKS);
    }

    /** Nothing can be taken from what is dark already; that is not how a rail bears a failure. */
    @Test
    void doesNotCallARailRedundantThatLacksVoltageWithEverythingInOrder() {
        Rail avionics = redundant("avionics", 5, 4, 10);
        PartLine hungry = serving(receiver("receiver", "avionics", 2, 5.7), AILERON);
        List<Feed> fed = List.of(feed("first", "avionics", fuse(10)), feed("second", "avionics", fuse(10)));
        List<PowerSource> sources = List.of(bench("first", 5.6), bench("second", 5.6));

        assertThat(List.of(
                        FailureFindings.of(table(sources, List.of(avionics), fed, hungry)),
                        FailureFindings.of(table(sources, List.of(avionics), List.of(), RECEIVER))))
                .allSatisfy(findings -> {
                    assertThat(findings).extracting(Finding::verdict).containsOnly(Verdict.UNKNOWN);
                    assertThat(findings.get(0).sentence())
                            .isEqualTo("Whether “Rail avionics” bears any single failure is not known as long as it, or"
                                    + " a load on it, lacks voltage with everything in order.");
                    assertThat(findings.get(1).sentence()).contains("“Part receiver”");
                });
    }
}
