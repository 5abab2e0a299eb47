package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Control;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a drawing of a transmitter's controls shows: texts are ready, nothing in it needs computing.
 *
 * @param sentences what stands at the head, a sentence each
 */
public record TransmitterView(String airframe, List<String> sentences, List<ControlMark> controls) {

    /**
     * One control with the channels it moves.
     *
     * @param kind null = channels that nothing moves yet
     * @param stops how many places it has; 0 = it moves freely
     * @param note what else is said of it; empty = nothing
     * @param quiet it moves nothing
     */
    public record ControlMark(
            String name,
            Control.@Nullable Kind kind,
            int stops,
            String note,
            boolean quiet,
            List<ChannelMark> channels) {

        public ControlMark {
            channels = List.copyOf(channels);
        }
    }

    /**
     * One channel.
     *
     * @param sharing how many functions it carries
     * @param fault what is wrong with it; empty = nothing is known to be
     * @param stops what is commanded at each place in order along the pulse; one without a label for what moves freely
     * @param onLoss what the receiver sends when the signal is lost, a line each; none = nothing of its own
     */
    public record ChannelMark(
            int number, boolean pinned, int sharing, String fault, List<Stop> stops, List<Said> onLoss) {

        public ChannelMark {
            stops = List.copyOf(stops);
            onLoss = List.copyOf(onLoss);
        }

        /** {@code Channel 6, pinned, shared by 3}. */
        public String title() {
            return "Channel " + number + (note().isEmpty() ? "" : ", " + note());
        }

        /** {@code pinned, shared by 3}; empty = neither. */
        public String note() {
            String shared = sharing > 1 ? "shared by " + sharing : "";
            return !pinned ? shared : shared.isEmpty() ? "pinned" : "pinned, " + shared;
        }
    }

    /**
     * A place of a control.
     *
     * @param label its number along the pulse; empty = it has none
     * @param says what it commands, a line each function
     */
    public record Stop(String label, List<Said> says) {

        public Stop {
            says = List.copyOf(says);
        }
    }

    /**
     * What is commanded of one function.
     *
     * @param name of the function; empty = it need not be said
     * @param state empty = it follows the control
     */
    public record Said(String name, String state) {

        /** {@code Wheels: down}. */
        public String told() {
            return name.isEmpty() || state.isEmpty() ? name + state : name + ": " + state;
        }
    }

    public TransmitterView {
        sentences = List.copyOf(sentences);
        controls = List.copyOf(controls);
    }
}
