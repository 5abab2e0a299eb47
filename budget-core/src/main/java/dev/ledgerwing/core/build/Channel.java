package dev.ledgerwing.core.build;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One channel of the link: what moves it and what it commands.
 *
 * @param number from 1
 * @param control code of what moves it; null = nothing yet
 * @param pinned a new plan leaves its number, its control and its functions as they are
 */
public record Channel(int number, @Nullable String control, boolean pinned, List<Carried> carries) implements Element {

    /**
     * A function on a channel.
     *
     * @param states its state at each position of the control, in order along the pulse; none for a proportional function
     * @param presetState where the receiver's preset takes it when the signal is lost; null = no preset
     */
    public record Carried(
            String function, List<String> states, @Nullable String presetState) {

        public Carried {
            states = List.copyOf(states);
            Check.slug("function", function);
            states.forEach(state -> Check.name("states", state));
            if (presetState != null) {
                Check.name("presetState", presetState);
            }
        }
    }

    public Channel {
        carries = List.copyOf(carries);
        Check.within("number", number, 1, RadioLink.MOST_CHANNELS);
        if (control != null) {
            Check.slug("control", control);
        }
        Check.require(
                new HashSet<>(functions(carries)).size() == carries.size(), "carries must not name a function twice");
        Check.require(
                carries.stream().map(each -> each.states().size()).distinct().count() <= 1,
                "carries must say the state of every function at every position");
    }

    @Override
    public String id() {
        return String.valueOf(number);
    }

    @Override
    public String name() {
        return "channel " + number;
    }

    /** Codes of the functions it carries. */
    public List<String> functions() {
        return functions(carries);
    }

    private static List<String> functions(List<Carried> carries) {
        return carries.stream().map(Carried::function).collect(Collectors.toList());
    }

    public Channel withControl(@Nullable String changed) {
        return new Channel(number, changed, pinned, carries);
    }

    public Channel withCarries(List<Carried> changed) {
        return new Channel(number, control, pinned, changed);
    }
}
