package dev.ledgerwing.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class OutputsFigureTest {

    @Test
    void saysHowManyOutputsOfTheBoardAreNeeded() {
        assertThat(OutputsFigure.of(Map.of("outputs.needed", 9.0, "outputs.available", 12.0))
                        .words())
                .isEqualTo("9 of 12 outputs");
        assertThat(new OutputsFigure(9, 8).words()).isEqualTo("9 outputs needed, 8 there");
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        assertThat(OutputsFigure.of(Map.of()).words()).isEqualTo("no board yet");
        assertThat(new OutputsFigure(1, null).words()).isEqualTo("1 output needed, no board yet");
        assertThat(new OutputsFigure(null, 8).words()).isEqualTo("8 outputs");
    }
}
