package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * One thing that can be taken out of what the channels are asked to do.
 *
 * @param code of the function; of a PIN the number of the channel, of an ORDER the code of the phase that comes first
 * @param phase of a DEMAND or a LIMIT; of an ORDER the phase that follows
 * @param state the one that must be selectable, of a DEMAND; the one wanted, of a LOSS
 */
public record Cause(
        Kind kind,
        String code,
        @Nullable String phase,
        @Nullable String state) {

    /** What it is, in the order in which reasons are told. */
    public enum Kind {
        /** A function that needs a channel. */
        FUNCTION,
        /** A state that must be selectable in a phase. */
        DEMAND,
        /** What a function may be in a phase, as far as that is limited. */
        LIMIT,
        /** What stands between the pulse and the state; without it any range of the pulse may mean any state. */
        DECODER,
        /** A state wanted when the signal is lost. */
        LOSS,
        /** A channel that a new plan leaves as it is. */
        PIN,
        /** A phase that may follow another. */
        ORDER
    }

    static Cause of(Kind kind, String code) {
        return new Cause(kind, code, null, null);
    }

    /** What is left to be planned without it. */
    ChannelProblem takenFrom(ChannelProblem problem) {
        Radio radio = problem.radio();
        return switch (kind) {
            case FUNCTION -> FewerFunctions.without(problem, code);
            case DEMAND -> withFunction(problem, each -> withDemand(each, false));
            case LIMIT -> withFunction(problem, each -> withDemand(each, true));
            case DECODER ->
                withFunction(problem, each -> with(each, each.onSignalLoss(), RadioFunction.DecodedBy.TABLE));
            case LOSS -> withFunction(problem, each -> with(each, null, each.decodedBy()));
            case PIN ->
                new ChannelProblem(
                        FewerFunctions.withChannels(
                                radio,
                                radio.channels().stream().map(this::unpinned).toList()),
                        problem.phases());
            case ORDER ->
                new ChannelProblem(
                        radio,
                        problem.phases().stream()
                                .map(each -> each.code().equals(code)
                                        ? each.withNext(each.next().stream()
                                                .filter(next -> !next.equals(phase))
                                                .toList())
                                        : each)
                                .toList());
        };
    }

    private Channel unpinned(Channel channel) {
        return channel.id().equals(code)
                ? new Channel(channel.number(), channel.control(), false, channel.carries())
                : channel;
    }

    private ChannelProblem withFunction(ChannelProblem problem, UnaryOperator<RadioFunction> change) {
        Radio radio = problem.radio();
        List<RadioFunction> functions = radio.functions().stream()
                .map(each -> each.code().equals(code) ? change.apply(each) : each)
                .toList();
        return new ChannelProblem(
                new Radio(radio.link(), radio.controls(), functions, radio.channels(), radio.notNeeded()),
                problem.phases());
    }

    private RadioFunction withDemand(RadioFunction function, boolean limit) {
        if (phase == null) {
            return function;
        }
        Demand demand = function.demandIn(phase);
        List<String> must = demand.mustSelect().stream()
                .filter(each -> limit || !each.equals(state))
                .toList();
        Map<String, Demand> changed = new TreeMap<>(function.demandByPhase());
        changed.put(phase, new Demand(must, limit ? List.of() : demand.mayHave()));
        return function.withDemandByPhase(changed);
    }

    private static RadioFunction with(
            RadioFunction function, @Nullable String onSignalLoss, RadioFunction.@Nullable DecodedBy decodedBy) {
        return new RadioFunction(
                function.code(),
                function.name(),
                function.kind(),
                function.states(),
                function.criticality(),
                function.irreversible(),
                onSignalLoss,
                decodedBy,
                function.demandByPhase(),
                function.otherwiseBy());
    }
}
