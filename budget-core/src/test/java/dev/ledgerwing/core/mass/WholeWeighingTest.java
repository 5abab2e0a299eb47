package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a weigh-in of the whole airframe changes about masses. */
class WholeWeighingTest {

    private final Build guessed = Ledgers.with(
            Ledgers.line("hull", Category.STRUCTURE, 500, Basis.GUESSED),
            Ledgers.line("tail", Category.STRUCTURE, 200, Basis.GUESSED),
            Ledgers.line("lamp", Category.AVIONICS, 50, Basis.GUESSED));

    private final Build weighed = guessed.withWeighIns(List.of(Builds.weighIn("W1", List.of("hull", "tail"))));

    private static double growthPercent(Build build, String line) {
        return MassStatement.of(build).row(line).orElseThrow().growthPercent();
    }

    @Test
    void whatStoodOnTheScalesGrowsNoMore() {
        assertThat(growthPercent(guessed, "hull")).isGreaterThan(0);
        assertThat(growthPercent(weighed, "hull")).isZero();
        assertThat(growthPercent(weighed, "tail")).isZero();
        assertThat(growthPercent(weighed, "lamp")).isEqualTo(growthPercent(guessed, "lamp"));
    }

    @Test
    void anotherPartFittedSinceGrowsAgain() {
        Build other = PartDeeds.changed(
                weighed,
                weighed.line("hull").orElseThrow().withMass(LineMass.of(Mass.ofGrams(450), Basis.GUESSED)),
                Nature.FITTED);

        assertThat(growthPercent(other, "hull")).isEqualTo(growthPercent(guessed, "hull"));
        assertThat(growthPercent(other, "tail")).isZero();
    }

    @Test
    void togetherTheyErrAsTheScalesDo() {
        Build all = guessed.withWeighIns(List.of(Builds.weighIn("W1", List.of("hull", "tail", "lamp"))));

        assertThat(MassForecast.of(all).standardUncertaintyG())
                .as(
                        "JCGM 100: step 1 g and error 2 g, twice for the tare; a strap of 30 g, weighed by the team's rule, taken out")
                .isCloseTo(Math.sqrt(2 * (1 / 12.0 + 4 / 3.0) + 2 * (1 / 12.0 + 1 / 3.0)), within(1e-9));
        assertThat(MassForecast.of(guessed).standardUncertaintyG()).isGreaterThan(100);
    }

    @Test
    void theNewestWeighInOfTheWholeCounts() {
        Build both = guessed.withWeighIns(
                List.of(Builds.weighIn("W1", List.of("hull")), Builds.weighIn("W2", List.of("tail"))));

        assertThat(WholeWeighing.of(both).orElseThrow().weighIn().id()).isEqualTo("W2");
        assertThat(growthPercent(both, "hull")).isGreaterThan(0);
    }

    @Test
    void theBookingOfAnAssemblyStaysAtHomeWithIt() {
        LoadCase without = Ledgers.loadCase("bare", LoadCase.Purpose.GROUND, List.of("hull"));
        Build build = Ledgers.withCases(
                Ledgers.with(Ledgers.certain("hull", 500), Ledgers.inWing(Ledgers.certain("rib", 100))), without);
        String hull = build.line("hull").orElseThrow().assembly();
        Build booked = build.withBooking(new Booking(Mass.ofGrams(7), "whole on the scales"))
                .withAssemblyBookings(
                        List.of(new AssemblyBooking(hull, new Booking(Mass.ofGrams(30), "hull on the scales"))));

        MassStatement statement = MassStatement.of(booked);

        assertThat(statement.booking()).isEqualTo(Mass.ofGrams(37));
        assertThat(statement.predicted()).isEqualTo(Mass.ofGrams(637));
        assertThat(statement.cases())
                .filteredOn(each -> each.loadCase().code().equals("bare"))
                .singleElement()
                .satisfies(bare -> assertThat(bare.predicted()).isEqualTo(Mass.ofGrams(107)));
        assertThat(MassFindings.of(MassForecast.of(statement), Figures.METRIC))
                .filteredOn(finding -> finding.code().equals("mass.booking"))
                .hasSize(2);
    }
}
