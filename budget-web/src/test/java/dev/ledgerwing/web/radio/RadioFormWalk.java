package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Control.Kind;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.web.forms.RecordFormWalk;
import java.util.List;
import java.util.Map;

/** An airframe, and a browser to fill in forms on its radio. */
abstract class RadioFormWalk extends RecordFormWalk {

    final String radio = page;

    RadioFormWalk() {
        super("radio");
    }

    /** Two phases, gear and pump on one channel, the throttle on another, a mix, and a combination given up. */
    static Build equipped(Build build) {
        RadioLink link = new RadioLink(6, OnLoss.PRESET, ActsOnLoss.RECEIVER, null, null);
        List<Control> controls = List.of(
                Control.of("stick", "Left stick", Kind.STICK),
                Control.ofSwitch("a", "Left switch", 2),
                Control.ofSwitch("b", "Right switch", 3),
                new Control("a-b", "Both switches", Kind.MIXED, 6, List.of("a", "b")));
        List<Channel> channels = List.of(
                new Channel(1, "stick", true, List.of(new Carried("throttle", List.of(), "low end"))),
                new Channel(
                        5,
                        "a",
                        false,
                        List.of(
                                new Carried("gear", List.of("down", "up"), "down"),
                                new Carried("pump", List.of("off", "on"), null))));
        NotNeeded given = new NotNeeded(
                "N1",
                List.of("cruise"),
                List.of(new FunctionState("gear", "up"), new FunctionState("pump", "off")),
                "Mara",
                "never flown");
        return build.withPhases(List.of(phase("power-on", "Power on"), phase("cruise", "Cruise")))
                .withRadio(new Radio(link, controls, functions(), channels, List.of(given)));
    }

    private static Phase phase(String code, String name) {
        return new Phase(code, name, null, false, null, List.of(), false);
    }

    private static List<RadioFunction> functions() {
        return List.of(
                new RadioFunction(
                        "throttle",
                        "Throttle",
                        RadioFunction.Kind.PROPORTIONAL,
                        List.of(),
                        Criticality.FLIGHT,
                        false,
                        "low end",
                        null,
                        Map.of(),
                        null),
                new RadioFunction(
                        "gear",
                        "Gear",
                        RadioFunction.Kind.SWITCHED,
                        List.of("down", "up"),
                        Criticality.MISSION,
                        false,
                        "down",
                        DecodedBy.ONE_STEP,
                        Map.of(
                                "power-on",
                                new Demand(List.of(), List.of("down")),
                                "cruise",
                                Demand.select("down", "up")),
                        null),
                new RadioFunction(
                        "pump",
                        "Pump",
                        RadioFunction.Kind.SWITCHED,
                        List.of("off", "on"),
                        Criticality.CONVENIENCE,
                        false,
                        null,
                        null,
                        Map.of(),
                        null));
    }
}
