package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.ledgerwing.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class GeometryTest {

    private static Panel panel(double spanMm, double rootMm, double tipMm) {
        return new Panel(Length.ofMm(spanMm), Length.ofMm(rootMm), Length.ofMm(tipMm), Length.ZERO, 0);
    }

    @Test
    void aPanelNeedsAnArea() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> panel(0, 300, 200))
                .withMessage("spanMm must be more than 0 mm, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> panel(900, 0, 0))
                .withMessage("a panel needs a chord above 0 mm at its root or at its tip");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> panel(900, 300, -1))
                .withMessageContaining("tipChordMm must be from 0");
        assertThat(panel(900, 300, 0).tipChord()).as("a delta has none").isEqualTo(Length.ZERO);
    }

    @Test
    void aSurfaceNeedsAPanel() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Surface(Station.atX(Length.ZERO), true, List.of()))
                .withMessage("panels must hold one panel at least");
    }

    @Test
    void theForwardLimitLiesAheadOfTheAftOne() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BalanceLimits.ofPercentMac(38, 28))
                .withMessage("the forward limit must lie ahead of the aft one, was 38.0 % and 28.0 %");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BalanceLimits.ofStations(Length.ofMm(105), Length.ofMm(105)))
                .withMessage("the forward limit must lie ahead of the aft one, was 105.0 mm and 105.0 mm");
    }

    @Test
    void limitsAreGivenInOneWayAndAtBothEnds() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BalanceLimits(28.0, null, null, null))
                .withMessage("a balance limit needs both ends, the forward and the aft one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BalanceLimits(28.0, 38.0, Length.ofMm(95), Length.ofMm(105)))
                .withMessage("balance limits are given in per cent of the chord or in millimetres, not both");
    }

    @Test
    void aBayIsLimitedOnBothSidesOrOnNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new Bay("b", "Bay", Length.ZERO, Length.ofMm(1), Length.ZERO, null, null, null, List.of()))
                .withMessage("a bay is limited on both sides along Y or on none");
    }
}
