package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.RadioWords.and;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.radio.plan.ChannelFault;
import java.util.List;
import java.util.Locale;

/** What is wrong with recorded channels, in words. */
final class FaultWords {

    private final RadioStatement statement;
    private final RadioWords words;

    FaultWords(RadioStatement statement) {
        this.statement = statement;
        words = new RadioWords(statement.build());
    }

    /** The function it is about, or else the channel. */
    String subject(ChannelFault fault) {
        return fault.functions().isEmpty() || (fault.functions().size() > 1 && fault.channel() != null)
                ? channel(fault)
                : words.name(fault.functions().get(0));
    }

    String sentence(ChannelFault fault) {
        String channel = channel(fault);
        String functions = functions(fault);
        return switch (fault.kind()) {
            case NOT_CARRIED -> "No channel carries " + functions + ".";
            case CARRIED_TWICE -> functions + " is on more than one channel.";
            case NUMBER_TWICE -> "Two channels have the same number: " + channel + ".";
            case BEYOND_THE_LINK ->
                capital(channel) + " is beyond the " + statement.channelsAvailable() + " that the link has.";
            case NO_CONTROL -> "Nothing on the transmitter moves " + channel + ".";
            case WRONG_CONTROL ->
                "The control of " + channel + " does not suit " + functions
                        + ": what is proportional needs a stick or a slider, what is switched a switch.";
            case CONTROL_TWICE -> "The control of " + channel + " moves another channel as well.";
            case WRONG_POSITIONS -> "The states on " + channel + " are not as many as the positions of its control.";
            case NO_SUCH_STATE -> capital(channel) + " sets a state that " + functions + " does not have.";
            case NEVER_SHARES ->
                functions + (fault.functions().size() == 1 ? " is" : " are") + " on " + channel
                        + " with others, but must have a channel of its own.";
            case NOT_REACHABLE -> notReachable(fault);
            case CROSSES -> crosses(fault);
            case DECODER -> "The order of the states on " + channel + " is one that " + functions + " cannot follow.";
            case PRESET ->
                "The preset of " + channel + " is not what is wanted of " + functions + " on loss of signal.";
            case LOSS_STATE -> lossState(fault);
            case NOT_DECIDED ->
                "Whether the states on " + channel + " do what is asked is not known: there are too many combinations.";
        };
    }

    private String notReachable(ChannelFault fault) {
        return fault.states().isEmpty()
                ? capital(in(fault) + "every position of " + channel(fault) + " does harm.")
                : capital(in(fault) + "no position of " + channel(fault) + " gives " + states(fault) + ".");
    }

    private String crosses(ChannelFault fault) {
        String moves = in(fault) + "the control of " + channel(fault);
        return capital(
                fault.states().isEmpty()
                        ? moves + " cannot reach all that is asked without passing something that does harm."
                        : moves + " passes position " + fault.position() + " with " + states(fault)
                                + ", which does harm then.");
    }

    private String lossState(ChannelFault fault) {
        return fault.phase() == null
                ? "On loss of signal " + channel(fault) + " cannot go to " + states(fault) + " at once."
                : capital(in(fault) + "no position of " + channel(fault) + " that gives " + states(fault)
                        + " may be held when the signal is lost.");
    }

    private String states(ChannelFault fault) {
        return and(fault.states().stream().map(words::state).toList());
    }

    private String functions(ChannelFault fault) {
        return and(fault.functions().stream().map(words::function).toList());
    }

    private static String channel(ChannelFault fault) {
        return fault.channel() == null ? "the channels" : "channel " + fault.channel();
    }

    private String in(ChannelFault fault) {
        List<String> named = statement.build().phases().stream()
                .filter(phase -> phase.code().equals(fault.phase()))
                .map(Phase::name)
                .toList();
        return named.isEmpty() ? "" : "in " + named.get(0) + " ";
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
