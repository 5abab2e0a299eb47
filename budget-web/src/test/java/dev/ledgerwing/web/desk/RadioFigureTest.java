package dev.ledgerwing.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class RadioFigureTest {

    @Test
    void saysHowManyChannelsOfTheLinkAreNeeded() {
        assertThat(RadioFigure.of(Map.of(
                                "radio.channelsNeeded", 6.0, "radio.channelsAvailable", 8.0, "radio.sharedPairs", 0.0))
                        .words())
                .isEqualTo("6 of 8 channels needed");
        assertThat(new RadioFigure(6, 8, 1).words()).isEqualTo("6 of 8 channels needed, 1 pair shares");
        assertThat(new RadioFigure(6, 8, 3).words()).isEqualTo("6 of 8 channels needed, 3 pairs share");
    }

    @Test
    void saysWhatIsShort() {
        assertThat(new RadioFigure(8, 6, 6).words()).isEqualTo("8 channels needed, 6 there");
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        assertThat(RadioFigure.of(Map.of()).words()).isEqualTo("no link yet");
        assertThat(new RadioFigure(0, null, 0).words()).isEqualTo("no link yet");
        assertThat(new RadioFigure(null, 6, 0).words()).isEqualTo("6 channels");
        assertThat(new RadioFigure(1, null, null).words()).isEqualTo("1 channel needed");
    }
}
