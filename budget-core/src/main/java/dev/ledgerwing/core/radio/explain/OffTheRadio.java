package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A function that is commanded by the data link, or that the aircraft sees to by itself. */
public record OffTheRadio(RadioFunction function, OtherwiseBy instead) implements Relaxation {

    @Override
    public Kind kind() {
        return Kind.OFF_THE_RADIO;
    }

    @Override
    public String key() {
        return "off-the-radio:" + function.code() + "="
                + instead.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public String what() {
        return instead == OtherwiseBy.DATA_LINK
                ? "Command " + function.name() + " by the data link."
                : "Let the aircraft see to " + function.name() + " by itself.";
    }

    @Override
    public String loses() {
        return instead == OtherwiseBy.DATA_LINK
                ? function.name() + " can no longer be reached when the data link is out of range."
                : "Nobody can command " + function.name() + " by hand any more.";
    }

    @Override
    public @Nullable String caution() {
        return function.criticality() == Criticality.FLIGHT
                ? "The flight itself hangs on " + function.name() + ": the other path has to be proven first."
                : null;
    }

    @Override
    public Loss loss() {
        return Loss.ofFunctions(3, function);
    }

    @Override
    public Radio in(Radio radio, String by, String why) {
        List<RadioFunction> functions = radio.functions().stream()
                .map(each -> each.code().equals(function.code()) ? each.withOtherwiseBy(instead) : each)
                .toList();
        List<Channel> channels = radio.channels().stream().flatMap(this::off).toList();
        return new Radio(radio.link(), radio.controls(), functions, channels, radio.notNeeded());
    }

    /** A channel on which nothing is left is free again, even where it was pinned. */
    private Stream<Channel> off(Channel channel) {
        if (!channel.functions().contains(function.code())) {
            return Stream.of(channel);
        }
        List<Channel.Carried> left = channel.carries().stream()
                .filter(each -> !each.function().equals(function.code()))
                .toList();
        return left.isEmpty() ? Stream.empty() : Stream.of(channel.withCarries(left));
    }
}
