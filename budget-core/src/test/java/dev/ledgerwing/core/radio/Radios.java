package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.build.SolarArray;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Small radios to calculate with: a power-on phase, then the cruise in which the sun charges, then the landing. */
public final class Radios {

    public static final Phase POWER_ON = phase("power-on", "Power on", false, "cruise");
    public static final Phase CRUISE = phase("cruise", "Cruise", true, "landing");
    public static final Phase LANDING = phase("landing", "Landing", false);
    public static final Control STICK = Control.of("stick", "Stick", Control.Kind.STICK);
    public static final Control LEFT = Control.ofSwitch("left", "Left switch", 2);
    public static final Control RIGHT = Control.ofSwitch("right", "Right switch", 3);

    private Radios() {}

    public static Phase phase(String code, String name, boolean chargingPossible, String... next) {
        return new Phase(code, name, null, false, null, List.of(next), chargingPossible);
    }

    public static RadioLink link(int channels, @Nullable OnLoss onLoss, @Nullable ActsOnLoss acts) {
        return new RadioLink(channels, onLoss, acts, null, null);
    }

    /** A link whose receiver goes to its presets. */
    public static RadioLink presets(int channels) {
        return link(channels, OnLoss.PRESET, ActsOnLoss.RECEIVER);
    }

    public static RadioFunction throttle(@Nullable String onSignalLoss) {
        return new RadioFunction(
                "throttle",
                "Throttle",
                Kind.PROPORTIONAL,
                List.of(),
                Criticality.FLIGHT,
                false,
                onSignalLoss,
                null,
                Map.of(),
                null);
    }

    /** Down or up; both may be in the first phase. */
    public static RadioFunction gear(@Nullable String onSignalLoss, String cruise, String landing) {
        return switched("gear", "Landing gear", onSignalLoss, cruise, landing, "down", "up");
    }

    /** Off or on. */
    public static RadioFunction charging(@Nullable String onSignalLoss, String cruise, String landing) {
        return switched("charging", "Charging", onSignalLoss, cruise, landing, "off", "on");
    }

    /**
     * A function that asks nothing in the first phase, and lets every state be there.
     *
     * @param cruise the states asked for there, with commas; empty = none
     */
    public static RadioFunction switched(
            String code, String name, @Nullable String onSignalLoss, String cruise, String landing, String... states) {
        Map<String, Demand> demands = new HashMap<>();
        demands.put("power-on", new Demand(List.of(), List.of(states)));
        demands.put("cruise", asking(cruise));
        demands.put("landing", asking(landing));
        return new RadioFunction(
                code,
                name,
                Kind.SWITCHED,
                List.of(states),
                Criticality.MISSION,
                false,
                onSignalLoss,
                DecodedBy.TABLE,
                demands,
                null);
    }

    private static Demand asking(String states) {
        return states.isEmpty() ? Demand.OPEN : Demand.select(states.split(","));
    }

    public static Carried carried(String function, @Nullable String preset, String... states) {
        return new Carried(function, List.of(states), preset);
    }

    public static Channel channel(int number, String control, Carried... carries) {
        return new Channel(number, control, false, List.of(carries));
    }

    public static Radio radio(@Nullable RadioLink link, List<RadioFunction> functions, Channel... channels) {
        return new Radio(link, List.of(STICK, LEFT, RIGHT), functions, Arrays.asList(channels), List.of());
    }

    public static Build build(Radio radio) {
        return Ledgers.with().withPhases(List.of(POWER_ON, CRUISE, LANDING)).withRadio(radio);
    }

    /** Solar cells whose charging a function stops. */
    public static Build withCells(String stopFunction, Build build) {
        SolarArray array = new SolarArray(
                30.0, 15.0, 18.0, 2.2, -0.4, -0.3, 0, 90, false, SolarArray.Connection.TRACKER, 90.0, stopFunction);
        return build.withSources(List.of(PowerSource.solar("cells", "Cells", null, array)));
    }
}
