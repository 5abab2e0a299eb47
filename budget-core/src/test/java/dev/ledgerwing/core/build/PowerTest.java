package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.quantity.Length;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PowerTest {

    private static final Rail MAIN = new Rail("main", "Main rail", 5.0, 4.8, 5.4, false);

    private static Build with(Power power) {
        return Builds.small().withPower(power);
    }

    private static Power power(List<PowerSource> sources, List<Rail> rails, List<Feed> feeds) {
        return new Power(sources, rails, feeds, PowerRules.DEFAULT, null);
    }

    private static PowerSource battery(@Nullable String part) {
        return PowerSource.battery("pack", "Pack", part, Builds.pack(3));
    }

    @Test
    void aPackNeedsCells() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Builds.pack(0))
                .withMessage("seriesCells must be from 1 to 200, was 0");
    }

    @Test
    void cellsOfAnotherChemistrySayTheirVoltages() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new Pack(Pack.Chemistry.OTHER, 3, 1, null, null, null, null, null, null, 2.8, null, 1.5, false))
                .withMessageContaining("must be given for cells of another chemistry");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pack(
                        Pack.Chemistry.LITHIUM_ION, 3, 1, null, null, null, null, null, null, 3.0, null, 3.2, false))
                .withMessage("cellEmptyV must be less than cellFullV");
    }

    @Test
    void aSourceHoldsWhatItsKindAsksFor() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new PowerSource("pack", "Pack", PowerSource.Kind.BATTERY, null, null, null, null, null))
                .withMessage("pack must be given for a BATTERY, and only there");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new PowerSource("cells", "Cells", PowerSource.Kind.SOLAR, null, null, null, null, null))
                .withMessage("array must be given for SOLAR, and only there");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PowerSource(
                        "pack", "Pack", PowerSource.Kind.BATTERY, null, Builds.pack(3), null, 12.0, null))
                .withMessageContaining("belong to an EXTERNAL supply only");
    }

    @Test
    void noRegulatorGivesMoreThanItTakes() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Regulator(Regulator.Type.SWITCHING, 5, 104.0, null, null, null, null))
                .withMessage("efficiencyPercent must be from 1 to 100 %, was 104.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Regulator(Regulator.Type.SWITCHING, 5, 90.0, null, 12.0, 9.0, null))
                .withMessage("minInputV must be less than maxInputV");
    }

    @Test
    void anElementHoldsWhatItsKindAsksFor() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FeedElement.rated("Fuse", FeedElement.Kind.FUSE, -5.0))
                .withMessage("ratingA must be from 0.001 to 2000 A, was -5.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FeedElement.rated("Wire", FeedElement.Kind.WIRE, 5.0))
                .withMessage("wire must be given for a WIRE, and only there");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FeedElement(
                        "Switch", FeedElement.Kind.SWITCH, 5.0, 3.0, 1, null, null, null, null, null, null))
                .withMessage("peakRatingA must not be less than ratingA");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FeedElement(
                        "Switches", FeedElement.Kind.SWITCH, 5.0, null, 3, null, null, null, null, null, null))
                .withMessage("sharing must be given where several lie side by side");
    }

    @Test
    void aRunIsAPairAtLeast() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WireRun(20, Length.ofMm(200), 1, WireRun.Routing.BUNDLE, null))
                .withMessage("conductors must be from 2 to 100, was 1");
    }

    @Test
    void aRailCannotFeedItself() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Feed("loop", "Loop", "main", "main", List.of()))
                .withMessageContaining("a rail cannot feed itself");
    }

    @Test
    void feedsRunBetweenWhatIsThere() {
        Feed stray = new Feed("stray", "Stray", "nowhere", "pack", List.of());

        assertThatThrownBy(() -> with(power(List.of(battery("L009")), List.of(MAIN), List.of(stray))))
                .isInstanceOfSatisfying(
                        InvalidBuild.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::toString)
                                .containsExactlyInAnyOrder(
                                        "power.sources[0].part: there is no part “L009”",
                                        "power.feeds[0].from: there is no source or rail “nowhere”",
                                        "power.feeds[0].to: there is no rail “pack”"));
    }

    @Test
    void aSourceAndARailAreNotCalledAlike() {
        PowerSource main = PowerSource.external("main", "Bench supply", 12.0, 5.0);

        assertThatThrownBy(() -> with(power(List.of(main), List.of(MAIN), List.of())))
                .isInstanceOf(InvalidBuild.class)
                .hasMessageContaining("“main” is a rail already");
    }

    @Test
    void theDayAndTheStopNameWhatIsThere() {
        SolarDay day = new SolarDay(null, 53, -2, LocalDate.of(2026, 6, 21), 1, 0, 15, 100, 90, null, 6, 100, "cruise");

        assertThatThrownBy(() -> Builds.small().withSolarDay(day))
                .isInstanceOf(InvalidBuild.class)
                .hasMessageContaining("power.day.phase: there is no phase “cruise”");
    }

    @Test
    void aPartThatIsRemovedIsNoSourceAnyMoreButTheSourceStays() {
        Build build = with(power(List.of(battery("L002")), List.of(MAIN), List.of()));

        Build removed = PartDeeds.removed(build, "L002");

        assertThat(removed.power().sources()).containsExactly(battery(null));
    }

    @Test
    void aRuleThatIsLeftOutIsTheDefault() {
        assertThat(PowerRules.DEFAULT.reserve(FeedElement.Kind.FUSE)).isEqualTo(20);
        assertThat(PowerRules.DEFAULT.reserve(FeedElement.Kind.MOTOR_CONTROLLER))
                .isEqualTo(50);
        assertThat(PowerRules.DEFAULT.sourceReserve()).isEqualTo(20);
        assertThat(PowerRules.DEFAULT.dropLimitInForce()).isEqualTo(2);
    }
}
