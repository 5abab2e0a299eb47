package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.within;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LoadFlowTest {

    private static final RailLoad LOAD = new RailLoad(part("L", within(5, 6, constantCurrent("main", 1, 1))), 0, null);

    private static LoadFlow at(double volts) {
        return new LoadFlow(LOAD, true, 1, volts, false);
    }

    @Test
    void runsAtTheVeryVoltageThatItNeeds() {
        assertThat(at(5).isDark()).isFalse();
        assertThat(at(6).isTooHigh()).isFalse();
        assertThat(at(4.99).isDark()).isTrue();
        assertThat(at(6.01).isTooHigh()).isTrue();
    }

    @Test
    void isNotTakenForDarkBecauseOfRounding() {
        assertThat(at(5 - 1e-12).isDark()).isFalse();
        assertThat(at(6 + 1e-12).isTooHigh()).isFalse();
    }
}
