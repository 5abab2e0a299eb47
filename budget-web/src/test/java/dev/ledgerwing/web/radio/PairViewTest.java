package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.radio.plan.PairNeed;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PairViewTest {

    private static RadioFunction function(String name, Criticality criticality, boolean irreversible) {
        return new RadioFunction(
                name.toLowerCase(Locale.ROOT), name, Kind.SWITCHED, List.of("off", "on"), criticality, irreversible);
    }

    private final PairView view = PairView.of(
            Radio.of(List.of(
                    function("Behaviour", Criticality.FLIGHT, false),
                    function("Release", Criticality.MISSION, true),
                    function("Gear", Criticality.MISSION, false),
                    function("Camera", Criticality.MISSION, false),
                    function("Lights", Criticality.CONVENIENCE, false))),
            List.of(
                    new PairNeed("behaviour", "gear", null, PairNeed.Never.FLIGHT),
                    new PairNeed("gear", "camera", 3, PairNeed.Never.NONE),
                    new PairNeed("gear", "lights", 2, PairNeed.Never.NONE),
                    new PairNeed("camera", "lights", null, PairNeed.Never.NO_ORDER)));

    @Test
    void whatNeverSharesIsSaidOnceWithItsReason() {
        assertThat(view.alone())
                .containsExactly("Behaviour: the flight depends on it.", "Release: it cannot be taken back.");
        assertThat(view.rows()).extracting(PairView.Row::function).containsExactly("Gear", "Camera", "Lights");
    }

    @Test
    void everyOtherPairSaysItsPositionsOrNever() {
        assertThat(view.rows())
                .extracting(PairView.Row::cells)
                .containsExactly(List.of("", "3", "2"), List.of("3", "", "never"), List.of("2", "never", ""));
    }

    @Test
    void saysTheFewestPositionsFirst() {
        assertThat(view.rows().get(0).words())
                .containsExactly("On 2 positions with Lights", "On 3 positions with Camera");
        assertThat(view.rows().get(2).words()).containsExactly("On 2 positions with Gear", "Never with Camera");
    }

    @Test
    void givesTheReasonForAPairThatNeverShares() {
        assertThat(view.reasons()).singleElement().asString().startsWith("Camera and Lights: in no order");
    }
}
