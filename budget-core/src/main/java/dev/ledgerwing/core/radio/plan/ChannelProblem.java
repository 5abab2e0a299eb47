package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.List;

/**
 * What has to be carried and by what. It is not checked across: an explanation takes elements away and asks again.
 */
public record ChannelProblem(Radio radio, List<Phase> phases) {

    public ChannelProblem {
        phases = List.copyOf(phases);
    }

    public static ChannelProblem of(Build build) {
        return new ChannelProblem(build.radio(), build.phases());
    }

    /** The functions that need a channel of the radio, in the order of the record. */
    public List<RadioFunction> onTheRadio() {
        return radio.functions().stream().filter(RadioFunction::needsChannel).toList();
    }

    /** Those of {@link #onTheRadio()} that are switched. */
    public List<RadioFunction> switched() {
        return onTheRadio().stream()
                .filter(function -> function.kind() == RadioFunction.Kind.SWITCHED)
                .toList();
    }

    /** Those of {@link #onTheRadio()} that are proportional. */
    public List<RadioFunction> proportional() {
        return onTheRadio().stream()
                .filter(function -> function.kind() == RadioFunction.Kind.PROPORTIONAL)
                .toList();
    }

    /** The controls that stand in one of several places. */
    List<Control> stepping() {
        return radio.controls().stream()
                .filter(control -> control.kind().steps())
                .toList();
    }

    /** The controls that move freely: sticks first, then sliders. */
    List<Control> free() {
        return radio.controls().stream()
                .filter(control -> !control.kind().steps())
                .sorted((one, other) -> one.kind().compareTo(other.kind()))
                .toList();
    }
}
