package dev.ledgerwing.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is commanded by radio, and by which channels.
 *
 * @param link null = not known
 * @param channels the plan in force
 * @param notNeeded combinations of states that the team has given up
 */
public record Radio(
        @Nullable RadioLink link,
        List<Control> controls,
        List<RadioFunction> functions,
        List<Channel> channels,
        List<NotNeeded> notNeeded) {

    public static final Radio NONE = Radio.of(List.of());

    public Radio {
        controls = List.copyOf(controls);
        functions = List.copyOf(functions);
        channels = List.copyOf(channels);
        notNeeded = List.copyOf(notNeeded);
    }

    /** Functions of which it is not known how they are commanded. */
    public static Radio of(List<RadioFunction> functions) {
        return new Radio(null, List.of(), functions, List.of(), List.of());
    }
}
