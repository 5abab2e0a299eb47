package dev.ledgerwing.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class PowerFigureTest {

    @Test
    void saysWhatIsFreeAndHowLongItLasts() {
        assertThat(PowerFigure.of(Map.of("power.worstMarginPercent", 18.9, "power.enduranceMinutes", 47.8))
                        .words())
                .isEqualTo("18.9\u2009% free, 47.8\u2009min");
    }

    @Test
    void neverRoundsToTheBetter() {
        assertThat(new PowerFigure(0.09, null).words()).isEqualTo("0\u2009% free");
        assertThat(new PowerFigure(-0.01, null).words()).isEqualTo("0.1\u2009% over");
    }

    @Test
    void whatIsNotKnownIsNotFine() {
        assertThat(PowerFigure.of(Map.of()).words()).isEqualTo("no load against a rating yet");
        assertThat(new PowerFigure(null, 12.0).words()).isEqualTo("12\u2009min");
    }
}
