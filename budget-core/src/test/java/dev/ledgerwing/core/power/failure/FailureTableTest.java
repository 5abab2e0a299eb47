package dev.ledgerwing.core.power.failure;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.rated;
import static dev.ledgerwing.core.power.Supplies.redundant;
import static dev.ledgerwing.core.power.Supplies.resistance;
import static dev.ledgerwing.core.power.failure.Failures.AILERON;
import static dev.ledgerwing.core.power.failure.Failures.CAMERA;
import static dev.ledgerwing.core.power.failure.Failures.ELEVATOR;
import static dev.ledgerwing.core.power.failure.Failures.LIGHT;
import static dev.ledgerwing.core.power.failure.Failures.open;
import static dev.ledgerwing.core.power.failure.Failures.out;
import static dev.ledgerwing.core.power.failure.Failures.receiver;
import static dev.ledgerwing.core.power.failure.Failures.serving;
import static dev.ledgerwing.core.power.failure.Failures.several;
import static dev.ledgerwing.core.power.failure.Failures.shorted;
import static dev.ledgerwing.core.power.failure.Failures.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.Supplies;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FailureTableTest {

    /** Two packs through diodes: 6.0 V and 5.6 V open, 0.4 V lost in each diode, 2 A, 50 mohm in the second leg. */
    private static FailureTable twoLegs(double minV) {
        return table(
                List.of(bench("first", 6.0), bench("second", 5.6)),
                List.of(redundant("avionics", 5, 4, 10)),
                List.of(
                        feed("first", "avionics", fuse(10), diode(0.4)),
                        feed("second", "avionics", fuse(10), resistance(50), diode(0.4))),
                serving(receiver("receiver", "avionics", 2, minV), AILERON));
    }

    @Test
    void hasARowForEverySourceElementAndRail() {
        assertThat(twoLegs(4.5).rows().stream().map(row -> row.failure().words()))
                .containsExactlyInAnyOrder(
                        "“Bench first” gives nothing",
                        "“Bench second” gives nothing",
                        "The fuse “FUSE of 10.0 A” in “Feed first to avionics” fails open",
                        "The diode “Diode of 0.4 V” in “Feed first to avionics” fails open",
                        "The fuse “FUSE of 10.0 A” in “Feed second to avionics” fails open",
                        "The plug “Plug of 50.0 mohm” in “Feed second to avionics” fails open",
                        "The diode “Diode of 0.4 V” in “Feed second to avionics” fails open",
                        "“Rail avionics” is shorted");
    }

    @Test
    void letsTheOtherLegCarryAll() {
        FailureRow row = out(twoLegs(4.5), "first");

        assertThat(row.rails()).isEmpty();
        assertThat(row.loads()).isEmpty();
        assertThat(row.functions()).isEmpty();
        assertThat(row.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** By derivation: 6.0 - 0.4 = 5.6 V before, 5.6 - 0.4 - 2 x 0.05 = 5.1 V after. Still fed; 5.2 V are needed. */
    @Test
    void seesThatVoltageIsTooLowWhereCurrentStillArrives() {
        for (FailureRow row : List.of(out(twoLegs(5.2), "first"), open(twoLegs(5.2), "first-avionics", 1))) {
            assertThat(row.rails()).singleElement().satisfies(change -> {
                assertThat(change.isDark()).isFalse();
                assertThat(change.beforeV()).isCloseTo(5.6, within(1e-9));
                assertThat(change.afterV()).isCloseTo(5.1, within(1e-9));
                assertThat(change.when()).isEqualTo("all the time");
            });
            assertThat(row.loads())
                    .singleElement()
                    .satisfies(dark -> assertThat(dark.lowestV()).isCloseTo(5.1, within(1e-9)));
            assertThat(row.functions()).containsExactly(AILERON);
            assertThat(row.redundant()).hasSize(1);
            assertThat(row.verdict()).isEqualTo(Verdict.BREAKS);
        }
    }

    @Test
    void losesNothingWithTheLegThatCarriesNothing() {
        FailureRow row = out(twoLegs(5.2), "second");

        assertThat(row.rails()).isEmpty();
        assertThat(row.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void opensEveryFuseOnTheWayBackFromAShort() {
        FailureRow row = shorted(twoLegs(4.5), "avionics");

        assertThat(row.clearings().stream().map(clearing -> clearing.feed().code()))
                .containsExactly("first-avionics", "second-avionics");
        assertThat(row.dragged()).isEmpty();
        assertThat(row.functions()).containsExactly(AILERON);
    }

    @Test
    void doesNotBlameARedundantRailForAShortOfItsOwn() {
        FailureRow row = shorted(twoLegs(4.5), "avionics");

        assertThat(row.redundant()).isEmpty();
        assertThat(row.verdict()).isEqualTo(Verdict.TIGHT);
    }

    /** One pack, a payload rail and the avionics: a fuse keeps a short of the payload away, without it everything goes. */
    private static FailureTable payloadBeside(FeedElement guard) {
        return table(
                List.of(bench("pack", 12)),
                List.of(rail("avionics", 12), rail("payload", 12)),
                List.of(feed("pack", "avionics", rated(Kind.SWITCH, 20)), feed("pack", "payload", guard)),
                serving(receiver("receiver", "avionics", 1, 9), AILERON),
                serving(receiver("camera", "payload", 1, 9), CAMERA));
    }

    @Test
    void keepsAShortBehindItsFuse() {
        FailureRow row = shorted(payloadBeside(fuse(5)), "payload");

        assertThat(row.clearings()).singleElement().satisfies(clearing -> {
            assertThat(clearing.at().feed()).isEqualTo("pack-payload");
            assertThat(clearing.element().kind()).isEqualTo(Kind.FUSE);
        });
        assertThat(row.dragged()).isEmpty();
        assertThat(row.functions()).containsExactly(CAMERA);
    }

    @Test
    void takesThePackWhereNothingOpens() {
        for (Kind kind : List.of(Kind.SWITCH, Kind.CONNECTOR, Kind.SENSOR, Kind.MOTOR_CONTROLLER)) {
            FailureRow row = shorted(payloadBeside(rated(kind, 5)), "payload");

            assertThat(row.clearings()).isEmpty();
            assertThat(row.dragged().stream().map(PowerSource::code)).containsExactly("pack");
            assertThat(row.functions()).containsExactly(AILERON, CAMERA);
        }
    }

    @Test
    void doesNotTrustARegulatorToStopAShort() {
        FailureRow row = shorted(payloadBeside(Supplies.linear(10, 0.5)), "payload");

        assertThat(row.dragged().stream().map(PowerSource::code)).containsExactly("pack");
        assertThat(row.functions()).containsExactly(AILERON, CAMERA);
    }

    /** Each leg has a rail of its own before its diode: a short there cannot come back through the other leg. */
    @Test
    void stopsAShortAtTheDiodeOfTheOtherLeg() {
        FailureRow row = shorted(legsWithRails(diode(0.4)), "left");

        assertThat(row.dragged().stream().map(PowerSource::code)).containsExactly("first");
        assertThat(row.rails().stream().map(change -> change.rail().code())).containsExactly("left");
        assertThat(row.functions()).isEmpty();
    }

    @Test
    void letsAShortThroughWhereTheLegsHaveNoDiodes() {
        FailureRow row = shorted(legsWithRails(resistance(1)), "left");

        assertThat(row.dragged().stream().map(PowerSource::code)).containsExactly("first", "second");
        assertThat(row.functions()).containsExactly(AILERON);
        assertThat(row.redundant().stream().map(each -> each.code())).containsExactly("avionics");
    }

    private static FailureTable legsWithRails(FeedElement last) {
        return table(
                List.of(bench("first", 6.0), bench("second", 5.9)),
                List.of(rail("left", 6), rail("right", 6), redundant("avionics", 5, 4, 10)),
                List.of(
                        feed("first", "left", resistance(5)),
                        feed("second", "right", resistance(5)),
                        feed("left", "avionics", last),
                        feed("right", "avionics", last)),
                serving(receiver("receiver", "avionics", 1, 4.5), AILERON));
    }

    @Test
    void losesNothingOfSeveralSideBySideButLoadsTheOthers() {
        FailureTable table = table(
                List.of(bench("pack", 12)),
                List.of(rail("avionics", 12)),
                List.of(feed("pack", "avionics", several(Kind.FUSE, 2, Sharing.OWN_BRANCH, 5))),
                serving(receiver("receiver", "avionics", 8, 9), AILERON));

        FailureRow row = open(table, "pack-avionics", 0);

        assertThat(row.functions()).isEmpty();
        assertThat(row.failure().words())
                .isEqualTo("The fuse “Several” in “Feed pack to avionics”, one of 2, fails open");
        assertThat(row.overloads()).singleElement().satisfies(overload -> {
            assertThat(overload.beforeA()).isCloseTo(4, within(1e-9));
            assertThat(overload.afterA()).isCloseTo(8, within(1e-9));
            assertThat(overload.ratingA()).isEqualTo(5);
            assertThat(overload.isNew()).isTrue();
        });
    }

    @Test
    void seesTheLegThatIsTooSmallForAll() {
        FailureTable table = table(
                List.of(bench("first", 6.0), bench("second", 5.9)),
                List.of(redundant("avionics", 5, 4, 10)),
                List.of(
                        feed("first", "avionics", fuse(10), diode(0.4)),
                        feed("second", "avionics", fuse(1.5), diode(0.4))),
                receiver("receiver", "avionics", 2, 4.5));

        assertThat(out(table, "first").overloads()).singleElement().satisfies(overload -> {
            assertThat(overload.at()).isNotNull();
            assertThat(overload.code()).isEqualTo("second-avionics");
            assertThat(overload.beforeA()).isZero();
            assertThat(overload.afterA()).isCloseTo(2, within(1e-9));
            assertThat(overload.isNew()).isFalse(); // known already: each leg alone must carry all
        });
    }

    /** A failure takes a function only in a phase in which the part runs. */
    @Test
    void losesOnlyWhatShouldRun() {
        PartLine never = Supplies.part(
                "camera",
                Supplies.running(Map.of("launch", 0.0, "cruise", 0.0), Supplies.constantCurrent("avionics", 1, 1)));
        PartLine inCruise = Supplies.part(
                "light",
                Supplies.running(Map.of("launch", 0.0, "cruise", 0.5), Supplies.constantCurrent("avionics", 1, 1)));
        Build build = Failures.build(
                List.of(bench("pack", 12)),
                List.of(rail("avionics", 12)),
                List.of(feed("pack", "avionics", fuse(10))),
                List.of(Supplies.phase("launch"), Supplies.phase("cruise")),
                serving(never, CAMERA),
                serving(inCruise, LIGHT));

        FailureRow row = out(table(build), "pack");

        assertThat(row.functions()).containsExactly(LIGHT);
        assertThat(row.loads())
                .singleElement()
                .satisfies(dark -> assertThat(dark.phases()).containsExactly("Phase cruise"));
    }

    @Test
    void doesNotCallALoadFineThatSaysNoLeastVoltage() {
        Build build = Failures.build(
                List.of(bench("first", 6.0), bench("second", 5.6)),
                List.of(new Rail("avionics", "Avionics", 5.0, null, null, true)),
                List.of(feed("first", "avionics", diode(0.4)), feed("second", "avionics", diode(0.4))),
                List.of(),
                Supplies.part(
                        "receiver",
                        new ElectricalLoad(
                                "avionics",
                                ElectricalLoad.Draws.CONSTANT_CURRENT,
                                1.0,
                                1.0,
                                null,
                                null,
                                Map.of(),
                                null,
                                null)));

        FailureRow row = out(table(build), "first");

        assertThat(row.loads()).isEmpty();
        assertThat(row.unjudged()).hasSize(1);
        assertThat(row.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(out(table(build), "second").unjudged()).isEmpty();
    }

    /** Where empty packs are too low for a load anyway, a failure still takes it from full ones. */
    @Test
    void seesAFailureBehindALoadThatEmptyPacksDoNotCarry() {
        FailureTable table = table(
                List.of(Supplies.pack("pack", 3, 0)),
                List.of(rail("avionics", 12)),
                List.of(feed("pack", "avionics", fuse(10))),
                serving(receiver("receiver", "avionics", 1, 10), AILERON));

        assertThat(open(table, "pack-avionics", 0).functions()).containsExactly(AILERON);
    }

    @Test
    void putsTheGravestFirst() {
        FailureTable table = table(
                List.of(bench("pack", 12)),
                List.of(rail("comfort", 12), rail("errand", 12), rail("flight", 12), rail("bare", 12)),
                List.of(
                        feed("pack", "comfort", fuse(5)),
                        feed("pack", "errand", fuse(5)),
                        feed("pack", "flight", fuse(5)),
                        feed("pack", "bare", fuse(5))),
                serving(receiver("light", "comfort", 1, 9), LIGHT),
                serving(receiver("camera", "errand", 1, 9), CAMERA),
                serving(receiver("receiver", "flight", 1, 9), AILERON, ELEVATOR),
                receiver("heater", "bare", 1, 9));

        assertThat(table.rows().stream().map(row -> row.failure().code()))
                .containsExactly(
                        "pack",
                        "pack-flight",
                        "flight",
                        "pack-errand",
                        "errand",
                        "pack-comfort",
                        "comfort",
                        "pack-bare",
                        "bare");
    }
}
