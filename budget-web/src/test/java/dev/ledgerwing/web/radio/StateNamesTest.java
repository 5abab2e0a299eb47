package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StateNamesTest {

    private static final List<String> HAD = List.of("up", "half", "down");

    @Test
    void namesStandInLinesOfTheirOwnOrBehindCommas() {
        assertThat(StateNames.split(" off , on ")).containsExactly("off", "on");
        assertThat(StateNames.split("off\n\n on\n")).containsExactly("off", "on");
        assertThat(StateNames.split("off, for good\r\non")).containsExactly("off, for good", "on");
        assertThat(StateNames.split("")).isEmpty();
    }

    @Test
    void whatIsShownReadsAsItWas() {
        List<String> states = List.of("off, for good", "on");
        assertThat(StateNames.split(StateNames.joined(states))).isEqualTo(states);
    }

    @Test
    void aNewNameTakesThePlaceOfTheOneThatIsGone() {
        assertThat(StateNames.of("up, middle, out", HAD).renaming().names())
                .isEqualTo(Map.of("half", "middle", "down", "out"));
    }

    @Test
    void anotherOrderIsNoOtherName() {
        StateNames turned = StateNames.of("down, half, up", HAD);
        assertThat(turned.gone()).isEmpty();
        assertThat(turned.renaming().names()).isEmpty();
    }

    @Test
    void whichNameIsWhichCannotBeToldWhereTheirNumberDiffers() {
        StateNames fewer = StateNames.of("up, out", HAD);
        assertThat(fewer.areOnlyRenamed()).isFalse();
        assertThat(fewer.gone()).containsExactly("half", "down");
        assertThat(fewer.renaming().names()).isEmpty();
    }
}
