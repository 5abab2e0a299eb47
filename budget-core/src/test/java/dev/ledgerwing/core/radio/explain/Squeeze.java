package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Functions, controls and channels to be put together, a few at a time. */
record Squeeze(RadioLink link, List<Control> controls, List<RadioFunction> functions, List<Phase> phases) {

    /** A link with so many channels that falls silent on the loss of the signal. */
    static Squeeze ofChannels(int channels) {
        return new Squeeze(
                new RadioLink(channels, RadioLink.OnLoss.NO_PULSES, RadioLink.ActsOnLoss.RECEIVER, null, null),
                List.of(),
                List.of(),
                List.of());
    }

    /** Six channels, of which four sticks and the switch for the flight behaviour leave one. */
    static Squeeze sixChannels() {
        return ofChannels(6)
                .with(stick("right-sideways"), stick("right-up"), stick("left-sideways"), stick("left-up"))
                .with(Control.ofSwitch("left-toggle", "Left toggle", 2))
                .with(Control.ofSwitch("right-toggle", "Right toggle", 2))
                .with(Control.ofSwitch("front-toggle", "Front toggle", 2))
                .with(
                        proportional("aileron", "Aileron"),
                        proportional("elevator", "Elevator"),
                        proportional("rudder", "Rudder"),
                        proportional("throttle", "Throttle"),
                        flight("flight-behaviour", "Flight behaviour", "by hand", "held level"));
    }

    /** The same with a gear and a charging path that Transect and Arrival ask for. */
    static Squeeze gearAndCharging() {
        return sixChannels()
                .with(phase("transect", "Transect"), phase("arrival", "Arrival"))
                .with(
                        asking(
                                mission("gear", "Gear", "down", "up"),
                                Map.of("transect", Demand.select("up"), "arrival", Demand.select("down", "up"))),
                        asking(
                                mission("charging", "Charging", "off", "on"),
                                Map.of("transect", Demand.select("off", "on"), "arrival", Demand.select("off"))));
    }

    static Control stick(String code) {
        return Control.of(code, code, Control.Kind.STICK);
    }

    static Phase phase(String code, String name, String... next) {
        return new Phase(code, name, null, false, null, List.of(next), false);
    }

    static RadioFunction proportional(String code, String name) {
        return new RadioFunction(code, name, Kind.PROPORTIONAL, List.of(), Criticality.FLIGHT, false);
    }

    static RadioFunction flight(String code, String name, String... states) {
        return switched(code, name, Criticality.FLIGHT, states);
    }

    static RadioFunction mission(String code, String name, String... states) {
        return switched(code, name, Criticality.MISSION, states);
    }

    static RadioFunction convenience(String code, String name, String... states) {
        return switched(code, name, Criticality.CONVENIENCE, states);
    }

    static RadioFunction switched(String code, String name, Criticality criticality, String... states) {
        return with(
                new RadioFunction(code, name, Kind.SWITCHED, Arrays.asList(states), criticality, false),
                null,
                DecodedBy.TABLE);
    }

    static RadioFunction with(RadioFunction each, @Nullable String onSignalLoss, @Nullable DecodedBy decodedBy) {
        return new RadioFunction(
                each.code(),
                each.name(),
                each.kind(),
                each.states(),
                each.criticality(),
                each.irreversible(),
                onSignalLoss,
                decodedBy,
                each.demandByPhase(),
                each.otherwiseBy());
    }

    static RadioFunction asking(RadioFunction function, Map<String, Demand> demands) {
        return function.withDemandByPhase(demands);
    }

    Squeeze with(RadioLink changed) {
        return new Squeeze(changed, controls, functions, phases);
    }

    Squeeze with(Control... more) {
        return new Squeeze(link, joined(controls, more), functions, phases);
    }

    Squeeze with(RadioFunction... more) {
        return new Squeeze(link, controls, joined(functions, more), phases);
    }

    Squeeze with(Phase... more) {
        return new Squeeze(link, controls, functions, joined(phases, more));
    }

    private static <E> List<E> joined(List<E> some, E[] more) {
        List<E> all = new ArrayList<>(some);
        all.addAll(Arrays.asList(more));
        return List.copyOf(all);
    }

    ChannelProblem problem(Channel... channels) {
        return problem(List.of(channels), List.of());
    }

    ChannelProblem problem(List<Channel> channels, List<NotNeeded> notNeeded) {
        return new ChannelProblem(new Radio(link, controls, functions, channels, notNeeded), phases);
    }

    static Build build(ChannelProblem problem) {
        return Ledgers.with().withPhases(problem.phases()).withRadio(problem.radio());
    }
}
