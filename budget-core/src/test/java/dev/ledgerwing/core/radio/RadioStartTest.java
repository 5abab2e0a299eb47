package dev.ledgerwing.core.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.Stage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RadioStartTest {

    private final Build blank = Build.blank(
            new Airframe("snipe", "Snipe", null, Stage.DESIGN, "nose tip"), new MassBudget(null, null, null, null));

    @ParameterizedTest
    @EnumSource
    void saysNothingOfTheLossOfTheSignal(RadioStart start) {
        RadioLink link = start.on(blank).radio().link();

        assertThat(link).isNotNull();
        assertThat(link.onLoss()).isNull();
        assertThat(link.actsOnLoss()).isNull();
        assertThat(link.boardLearnsBy()).isNull();
        assertThat(link.train()).isNull();
    }

    @ParameterizedTest
    @EnumSource
    void putsInNoFunctionAndNoChannel(RadioStart start) {
        assertThat(start.on(blank).radio().functions()).isEmpty();
        assertThat(start.on(blank).radio().channels()).isEmpty();
    }

    @Test
    void twoSticksMoveFourWays() {
        assertThat(RadioStart.SIX_CHANNELS.on(blank).radio().controls())
                .extracting(Control::kind)
                .containsExactly(
                        Control.Kind.STICK,
                        Control.Kind.STICK,
                        Control.Kind.STICK,
                        Control.Kind.STICK,
                        Control.Kind.SWITCH,
                        Control.Kind.SWITCH);
    }

    @Test
    void isNotPutOnTopOfALinkOrAControl() {
        Build linked = blank.withRadioLink(RadioLink.of(4));
        Build controlled = blank.withControls(List.of(Control.ofSwitch("gear-switch", "Gear switch", 2)));

        assertThat(RadioStart.isOffered(blank)).isTrue();
        assertThat(RadioStart.isOffered(linked)).isFalse();
        assertThat(RadioStart.isOffered(controlled)).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> RadioStart.SIX_CHANNELS.on(linked));
    }
}
