package dev.ledgerwing.core.build;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Something the pilot commands.
 *
 * @param states the states of a switched function in order; none for a proportional one
 * @param irreversible cannot be taken back, as a release cannot
 * @param onSignalLoss the state wanted when the signal is lost: one of the states, or of {@link #LOSS_PLACES} for a
 *     proportional function; null = not said
 * @param decodedBy how the airframe tells the states apart along the pulse; null = not known
 * @param demandByPhase what each phase asks, by its code; a phase that is not named asks nothing and forbids nothing
 * @param otherwiseBy what commands it instead of a radio channel; null = the radio
 */
public record RadioFunction(
        String code,
        String name,
        Kind kind,
        List<String> states,
        Criticality criticality,
        boolean irreversible,
        @Nullable String onSignalLoss,
        @Nullable DecodedBy decodedBy,
        Map<String, Demand> demandByPhase,
        @Nullable OtherwiseBy otherwiseBy)
        implements Element {

    /** Where a proportional function can be wanted when the signal is lost; a throttle's low end is idle or off. */
    public static final List<String> LOSS_PLACES = List.of("low end", "middle", "high end");

    private static final int MOST_STATES = 8;

    /** How it is commanded. */
    public enum Kind {
        PROPORTIONAL,
        SWITCHED
    }

    /** What hangs on it: the flight itself, the errand, or comfort. */
    public enum Criticality {
        FLIGHT,
        MISSION,
        CONVENIENCE
    }

    /** What stands between the pulse and the state. */
    public enum DecodedBy {
        /** Any range of the pulse means any state, as in a table on the flight controller. */
        TABLE,
        /** One state below a point of the pulse, the other above it. */
        ONE_STEP,
        /** A servo that stands where the pulse says: another pulse is another place, the states in their order. */
        SERVO
    }

    /** How a function without a channel is commanded. */
    public enum OtherwiseBy {
        DATA_LINK,
        ON_BOARD
    }

    public RadioFunction {
        states = List.copyOf(states);
        demandByPhase = Collections.unmodifiableMap(new TreeMap<>(demandByPhase)); // a fixed order
        Check.slug("code", code);
        Check.name("name", name);
        states.forEach(state -> Check.name("states", state));
        Check.require(
                (kind == Kind.SWITCHED) == (states.size() >= 2),
                "states must be two or more for a SWITCHED function and none for a PROPORTIONAL one, were "
                        + states.size());
        Check.within("states", states.size(), 0, MOST_STATES);
        Check.require(new HashSet<>(states).size() == states.size(), "states must differ from each other");
        List<String> wanted = kind == Kind.SWITCHED ? states : LOSS_PLACES;
        Check.require(
                onSignalLoss == null || wanted.contains(onSignalLoss),
                "onSignalLoss must be one of " + String.join(", ", wanted) + ", was “" + onSignalLoss + "”");
        Check.require(
                decodedBy != DecodedBy.ONE_STEP || states.size() == 2,
                "decodedBy must not be ONE_STEP: one step tells two states apart, there are " + states.size());
        for (Map.Entry<String, Demand> demand : demandByPhase.entrySet()) {
            check("demandByPhase." + demand.getKey(), demand.getValue(), states);
        }
    }

    private static void check(String place, Demand demand, List<String> states) {
        for (String state : demand.mustSelect()) {
            Check.require(states.contains(state), place + ".mustSelect: there is no state “" + state + "”");
            Check.require(
                    demand.allows(state),
                    place + ".mustSelect: “" + state + "” must be selectable, so it must be among what does no harm");
        }
        for (String state : demand.mayHave()) {
            Check.require(states.contains(state), place + ".mayHave: there is no state “" + state + "”");
        }
    }

    /** A function of which nothing is said of phases, decoding and the loss of the signal. */
    public RadioFunction(
            String code, String name, Kind kind, List<String> states, Criticality criticality, boolean irreversible) {
        this(code, name, kind, states, criticality, irreversible, null, null, Map.of(), null);
    }

    @Override
    public String id() {
        return code;
    }

    /** What a phase asks of it. */
    public Demand demandIn(String phase) {
        return demandByPhase.getOrDefault(phase, Demand.OPEN);
    }

    /** Whether a channel of the radio has to carry it. */
    public boolean needsChannel() {
        return otherwiseBy == null;
    }

    /** Whether it may share a channel with others: switched, not for the flight itself, and not for good. */
    public boolean mayShare() {
        return kind == Kind.SWITCHED && criticality != Criticality.FLIGHT && !irreversible;
    }

    public RadioFunction withDemandByPhase(Map<String, Demand> changed) {
        return new RadioFunction(
                code, name, kind, states, criticality, irreversible, onSignalLoss, decodedBy, changed, otherwiseBy);
    }

    public RadioFunction withOtherwiseBy(@Nullable OtherwiseBy changed) {
        return new RadioFunction(
                code, name, kind, states, criticality, irreversible, onSignalLoss, decodedBy, demandByPhase, changed);
    }
}
