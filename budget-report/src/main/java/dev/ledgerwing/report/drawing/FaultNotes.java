package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelFault;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is wrong with channels, short enough to stand beside them. */
final class FaultNotes {

    private final Map<String, String> functionNames;
    private final Map<String, String> phaseNames;

    private FaultNotes(Build build) {
        this.functionNames = names(build.radio().functions(), RadioFunction::name);
        this.phaseNames = names(build.phases(), Phase::name);
    }

    private static <E extends Element> Map<String, String> names(List<E> elements, Function<E, String> name) {
        return elements.stream().collect(Collectors.toMap(Element::id, name, (first, second) -> first));
    }

    /** By the number of the channel; faults of no channel are left out. */
    static Map<Integer, String> byChannel(Build build, List<ChannelFault> faults) {
        FaultNotes notes = new FaultNotes(build);
        Map<Integer, String> byChannel = new TreeMap<>();
        for (ChannelFault fault : faults) {
            Integer channel = fault.channel();
            if (channel != null) {
                byChannel.merge(channel, notes.note(fault), (first, second) -> first + "; " + second);
            }
        }
        return byChannel;
    }

    private String note(ChannelFault fault) {
        String functions = fault.functions().stream()
                .map(code -> functionNames.getOrDefault(code, code))
                .collect(Collectors.joining(", "));
        return switch (fault.kind()) {
            case NOT_CARRIED -> functions + " is on no channel";
            case CARRIED_TWICE -> functions + " is on another channel too";
            case NUMBER_TWICE -> "its number is given twice";
            case BEYOND_THE_LINK -> "the link has not so many";
            case NO_CONTROL -> "nothing moves it";
            case WRONG_CONTROL -> "its control does not suit " + functions;
            case CONTROL_TWICE -> "its control moves another channel too";
            case WRONG_POSITIONS -> "its control has another number of positions";
            case NO_SUCH_STATE -> functions + " has no such state";
            case NEVER_SHARES -> functions + " must not share";
            case NOT_REACHABLE ->
                fault.states().isEmpty()
                        ? in(fault) + "every position does harm"
                        : in(fault) + "no position gives " + states(fault);
            case CROSSES -> in(fault) + "it crosses " + states(fault) + ", which does harm";
            case DECODER -> functions + " cannot follow the order";
            case PRESET -> "its preset is not what is wanted of " + functions;
            case NOT_DECIDED -> "too many combinations to check";
            case LOSS_STATE -> "what is wanted when the signal is lost cannot be had";
        };
    }

    private String in(ChannelFault fault) {
        String phase = fault.phase();
        return phase == null ? "" : "in " + phaseNames.getOrDefault(phase, phase) + " ";
    }

    private String states(ChannelFault fault) {
        return fault.states().stream().map(this::state).collect(Collectors.joining(" with "));
    }

    private String state(FunctionState each) {
        return functionNames.getOrDefault(each.function(), each.function()) + " " + each.state();
    }
}
