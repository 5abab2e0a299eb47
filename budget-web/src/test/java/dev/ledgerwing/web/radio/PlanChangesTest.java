package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.Stage;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanChangesTest {

    private static final Carried LIGHTS = new Carried("lights", List.of("off", "on"), null);
    private static final Carried GEAR = new Carried("gear", List.of("down", "up"), null);

    private final RadioNames names = RadioNames.of(Build.blank(
                    new Airframe("snipe", "Snipe", null, Stage.DESIGN, "nose tip"),
                    new MassBudget(null, null, null, null))
            .withControls(
                    List.of(Control.ofSwitch("left", "Left switch", 2), Control.ofSwitch("right", "Right switch", 2)))
            .withFunctions(List.of(function("lights", "Lights", "off", "on"), function("gear", "Gear", "down", "up"))));

    private static RadioFunction function(String code, String name, String... states) {
        return new RadioFunction(code, name, Kind.SWITCHED, List.of(states), Criticality.MISSION, false);
    }

    private static Channel channel(int number, String control, Carried... carries) {
        return new Channel(number, control, false, List.of(carries));
    }

    @Test
    void theSamePlanChangesNothing() {
        List<Channel> plan = List.of(channel(5, "left", LIGHTS, GEAR));

        assertThat(PlanChanges.between(plan, plan, names)).isEmpty();
    }

    @Test
    void saysWhatMovesAndByWhat() {
        assertThat(PlanChanges.between(
                        List.of(channel(5, "left", LIGHTS, GEAR)),
                        List.of(channel(5, "left", GEAR), channel(6, "right", LIGHTS)),
                        names))
                .containsExactly("Channel 6 is moved by Right switch.", "Lights moves from channel 5 to channel 6.");
    }

    @Test
    void saysWhichControlIsLeftAndWhichChannelBecomesFree() {
        assertThat(PlanChanges.between(
                        List.of(channel(5, "left", LIGHTS), channel(6, "right", GEAR)),
                        List.of(channel(5, "right", LIGHTS, GEAR)),
                        names))
                .containsExactly(
                        "Channel 5 is moved by Right switch, no longer by Left switch.",
                        "Gear moves from channel 6 to channel 5.",
                        "Channel 6 becomes free.");
    }

    @Test
    void saysAnotherOrderOfStatesAndAnotherPreset() {
        assertThat(PlanChanges.between(
                        List.of(channel(5, "left", LIGHTS, GEAR)),
                        List.of(channel(
                                5,
                                "left",
                                new Carried("lights", List.of("on", "off"), null),
                                new Carried("gear", List.of("down", "up"), "down"))),
                        names))
                .containsExactly("Lights on channel 5 becomes on, off.", "Gear is preset to down.");
    }

    @Test
    void presetsThatAreNotNeededAnyMoreAreSaidInOneSentence() {
        Carried lights = new Carried("lights", LIGHTS.states(), "on");
        Carried gear = new Carried("gear", GEAR.states(), "down");

        assertThat(PlanChanges.between(
                        List.of(channel(5, "left", lights, gear)), List.of(channel(5, "left", LIGHTS, GEAR)), names))
                .containsExactly("No preset is needed any more for Lights and Gear.");
    }

    @Test
    void aFunctionThatHadNoneGetsItsChannel() {
        assertThat(PlanChanges.between(List.of(), List.of(channel(1, "left", GEAR)), names))
                .containsExactly("Channel 1 is moved by Left switch.", "Gear gets channel 1.");
    }
}
