package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;

/** Small airframes whose radio is easy to follow. */
final class RadioAirframes {

    private RadioAirframes() {}

    static Build blank(String code) {
        return Build.blank(
                new Airframe(code, "Airframe " + code, null, Stage.DESIGN, "nose tip"),
                new MassBudget(Mass.ofGrams(2000), null, null, null));
    }

    /** One channel for two cameras: in the survey one of them, both or none must be selectable, but a switch has three positions at most. */
    static Build squeezed(String code) {
        return cameras(code, 1);
    }

    /** The same with a second channel. */
    static Build roomy(String code) {
        return cameras(code, 2);
    }

    private static Build cameras(String code, int channels) {
        return blank(code)
                .withPhases(List.of(
                        new Phase("power-on", "Power on", 1.0, false, null, List.of("survey"), false),
                        new Phase("survey", "Survey", 9.0, false, null, List.of(), false)))
                .withRadioLink(new RadioLink(
                        channels,
                        RadioLink.OnLoss.NO_PULSES,
                        RadioLink.ActsOnLoss.BOARD,
                        RadioLink.BoardLearnsBy.SILENCE,
                        null))
                .withControls(List.of(
                        Control.ofSwitch("left-switch", "Left switch", 3),
                        Control.ofSwitch("right-switch", "Right switch", 2)))
                .withFunctions(List.of(camera("upper-camera", "Upper camera"), camera("lower-camera", "Lower camera")));
    }

    private static RadioFunction camera(String code, String name) {
        return new RadioFunction(
                code,
                name,
                Kind.SWITCHED,
                List.of("off", "on"),
                Criticality.MISSION,
                false,
                "off",
                DecodedBy.TABLE,
                Map.of("power-on", new Demand(List.of("off"), List.of("off")), "survey", Demand.select("off", "on")),
                null);
    }
}
