package dev.ledgerwing.web.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.mass.BudgetBar.Span;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two parts: 1500 g basic, 100 g growth allowance. */
class BudgetBarTest {

    private static final double TENTH = 0.11;

    private static BudgetBar bar(Build build) {
        return BudgetBar.of(MassStatement.of(build), Figures.METRIC);
    }

    private static BudgetBar bar(MassBudget budget) {
        return bar(Airframes.withTwoParts("a", budget));
    }

    private static double end(@Nullable Span span) {
        Span there = Objects.requireNonNull(span);
        return there.x() + there.width();
    }

    private static double at(@Nullable Double place) {
        return Objects.requireNonNull(place);
    }

    @Test
    void theMassAndTheMarginEndAtTheTarget() {
        BudgetBar bar = bar(Airframes.target(2000));
        double scale = bar.basic().width() / 1500;
        assertThat(bar.growth().x()).isEqualTo(bar.basic().width());
        assertThat(bar.growth().width()).isCloseTo(100 * scale, within(TENTH));
        assertThat(end(bar.margin())).isCloseTo(at(bar.target()), within(TENTH));
        assertThat(at(bar.target())).isCloseTo(2000 * scale, within(1.0));
        assertThat(bar.over()).isNull();
    }

    @Test
    void whatLiesOverTheTargetIsDrawnInPlaceOfAMargin() {
        BudgetBar bar = bar(Airframes.target(1550));
        assertThat(bar.margin()).isNull();
        assertThat(Objects.requireNonNull(bar.over()).x()).isEqualTo(at(bar.target()));
        assertThat(end(bar.over())).isCloseTo(end(bar.growth()), within(TENTH));
    }

    @Test
    void aCeilingFarAwayIsNotDrawnAndOneNearbyIs() {
        assertThat(bar(Airframes.targetAndCeiling(2000, 25_000)).ceiling()).isNull();
        BudgetBar near = bar(Airframes.targetAndCeiling(2000, 2500));
        assertThat(at(near.ceiling())).isGreaterThan(at(near.target())).isLessThan(BudgetBar.WIDTH);
        assertThat(near.heaviest()).isNull();
    }

    @Test
    void theHeaviestFlightCaseIsMarkedWhereItIsNotTheOneDrawn() {
        BudgetBar bar =
                bar(Airframes.carrying(Airframes.withTwoParts("a", Airframes.targetAndCeiling(2000, 2500)), 300));
        assertThat(at(bar.heaviest())).isGreaterThan(end(bar.growth())).isLessThan(at(bar.target()));
    }

    @Test
    void aBookingOfEitherSignLeadsToThePredictedMass() {
        Build build = Airframes.withTwoParts("a", Airframes.target(2000));
        BudgetBar more = bar(build.withBooking(new Booking(Mass.ofGrams(50), "hall scales")));
        assertThat(Objects.requireNonNull(more.booking()).x()).isCloseTo(end(more.growth()), within(TENTH));
        assertThat(end(more.booking()))
                .isCloseTo(Objects.requireNonNull(more.margin()).x(), within(TENTH));
        BudgetBar less = bar(build.withBooking(new Booking(Mass.ofGrams(-50), "hall scales")));
        assertThat(end(less.booking())).isCloseTo(end(less.growth()), within(TENTH));
        assertThat(Objects.requireNonNull(less.booking()).x())
                .isCloseTo(Objects.requireNonNull(less.margin()).x(), within(TENTH));
    }

    @Test
    void saysInWordsWhatItShows() {
        assertThat(bar(Airframes.target(2000)).words().replace('\u2009', ' '))
                .isEqualTo("Predicted mass 1600 g: basic mass 1500 g, growth allowance 100 g."
                        + " Target 2000 g, margin 400 g.");
        assertThat(bar(Airframes.target(1550)).words()).contains("over it by 50");
        assertThat(bar(new MassBudget(null, null, null, null)).words()).endsWith("No target set yet.");
    }

    @Test
    void anAirframeOfNoMassIsDrawnAsNothing() {
        BudgetBar bar = bar(Airframes.blank("a", new MassBudget(null, null, null, null)));
        assertThat(bar.basic().width()).isZero();
        assertThat(bar.growth().width()).isZero();
    }
}
