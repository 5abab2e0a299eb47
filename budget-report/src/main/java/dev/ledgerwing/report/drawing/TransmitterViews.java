package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.report.drawing.TransmitterView.ChannelMark;
import dev.ledgerwing.report.drawing.TransmitterView.ControlMark;
import dev.ledgerwing.report.drawing.TransmitterView.Said;
import dev.ledgerwing.report.drawing.TransmitterView.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes a {@link TransmitterView} of the record of a build and of channels. */
final class TransmitterViews {

    private static final List<Said> NOTHING = List.of(new Said("", "carries nothing"));

    private final Build build;
    private final List<Channel> channels;
    private final Map<Integer, String> faults;
    private final Map<String, RadioFunction> functions;
    private final Map<String, Control> controls;

    /** {@code faults}: what is wrong with a channel, by its number. */
    TransmitterViews(Build build, List<Channel> channels, Map<Integer, String> faults) {
        this.build = build;
        this.channels = channels.stream()
                .sorted(Comparator.comparingInt(Channel::number))
                .toList();
        this.faults = faults;
        this.functions =
                build.radio().functions().stream().collect(Collectors.toMap(RadioFunction::code, Function.identity()));
        this.controls = build.radio().controls().stream().collect(Collectors.toMap(Control::code, Function.identity()));
    }

    TransmitterView view(List<String> head) {
        List<String> sentences = new ArrayList<>(head);
        sentences.add(link());
        if (channels.isEmpty()) {
            sentences.add("No channel carries anything yet.");
        }
        List<ControlMark> marks = new ArrayList<>();
        build.radio().controls().forEach(control -> marks.add(control(control)));
        List<Channel> loose = channels.stream()
                .filter(channel -> !controls.containsKey(channel.control()))
                .toList();
        if (!loose.isEmpty()) {
            marks.add(new ControlMark("No control yet", null, 0, "", false, marks(loose, null)));
        }
        return new TransmitterView(build.airframe().name(), sentences, marks);
    }

    private String link() {
        RadioLink link = build.radio().link();
        if (link == null) {
            return "The link is not recorded yet: how many channels it has is not known.";
        }
        OnLoss onLoss = link.onLoss();
        return link.channels() + " channels. When the signal is lost "
                + (onLoss == null
                        ? "it is not known what the receiver does."
                        : "the receiver " + RadioWords.of(onLoss) + ".");
    }

    private ControlMark control(Control control) {
        List<Channel> moved = channels.stream()
                .filter(channel -> control.code().equals(channel.control()))
                .toList();
        String mix = partOf(control);
        boolean quiet = moved.isEmpty();
        String note = quiet ? (mix.isEmpty() ? "moves nothing" : mix) : mixes(control);
        Integer positions = control.positions();
        return new ControlMark(
                control.name(), control.kind(), positions == null ? 0 : positions, note, quiet, marks(moved, control));
    }

    private String partOf(Control control) {
        return build.radio().controls().stream()
                .filter(mix -> mix.mixes().contains(control.code()))
                .filter(mix -> channels.stream().anyMatch(channel -> mix.code().equals(channel.control())))
                .map(mix -> "part of “" + mix.name() + "”")
                .findFirst()
                .orElse("");
    }

    private String mixes(Control control) {
        return control.mixes().isEmpty()
                ? ""
                : control.mixes().stream()
                        .map(code -> controls.containsKey(code)
                                ? Objects.requireNonNull(controls.get(code)).name()
                                : code)
                        .collect(Collectors.joining(" (coarse) and ", "mixes ", " (fine)"));
    }

    private List<ChannelMark> marks(List<Channel> moved, @Nullable Control control) {
        return moved.stream().map(channel -> mark(channel, control)).toList();
    }

    private ChannelMark mark(Channel channel, @Nullable Control control) {
        int sharing = channel.carries().size();
        String fault = faults.getOrDefault(channel.number(), "");
        List<Stop> stops = stops(channel, control);
        return new ChannelMark(channel.number(), channel.pinned(), sharing, fault, stops, onLoss(channel, stops));
    }

    private List<Stop> stops(Channel channel, @Nullable Control control) {
        Integer positions = control == null ? null : control.positions();
        int said = channel.carries().stream()
                .mapToInt(carried -> carried.states().size())
                .max()
                .orElse(0);
        if (positions == null && said == 0) {
            List<Said> names = channel.carries().stream()
                    .map(carried -> new Said(name(carried), ""))
                    .toList();
            return List.of(new Stop("", names.isEmpty() ? NOTHING : names));
        }
        return IntStream.range(0, Math.max(positions == null ? 0 : positions, said))
                .mapToObj(position -> new Stop(label(control, position), says(channel, position)))
                .toList();
    }

    /** The number along the pulse; of two mixed switches the place of each, the coarse one first. */
    private String label(@Nullable Control control, int position) {
        if (control == null || control.mixes().size() != 2) {
            return String.valueOf(position + 1);
        }
        Control fine = controls.get(control.mixes().get(1));
        Integer steps = fine == null ? null : fine.positions();
        return steps == null ? String.valueOf(position + 1) : (position / steps + 1) + "·" + (position % steps + 1);
    }

    private List<Said> says(Channel channel, int position) {
        return channel.carries().isEmpty()
                ? NOTHING
                : channel.carries().stream()
                        .map(carried -> new Said(
                                name(carried),
                                position < carried.states().size()
                                        ? carried.states().get(position)
                                        : "not said"))
                        .toList();
    }

    private List<Said> onLoss(Channel channel, List<Stop> stops) {
        OptionalInt same = sameAsOnLoss(channel);
        if (same.isPresent() && channel.carries().size() > 1) {
            return List.of(new Said("", "as at " + stops.get(same.getAsInt()).label()));
        }
        return channel.carries().stream()
                .flatMap(carried -> Stream.ofNullable(carried.presetState())
                        .map(state -> new Said(channel.carries().size() == 1 ? "" : name(carried), state)))
                .toList();
    }

    /** The place at which everything stands as it does when the signal is lost. */
    private static OptionalInt sameAsOnLoss(Channel channel) {
        int places = channel.carries().stream()
                .mapToInt(carried -> carried.states().size())
                .min()
                .orElse(0);
        return IntStream.range(0, places)
                .filter(place -> channel.carries().stream()
                        .allMatch(carried -> carried.states().get(place).equals(carried.presetState())))
                .findFirst();
    }

    private String name(Carried carried) {
        RadioFunction function = functions.get(carried.function());
        return function == null ? carried.function() : function.name();
    }
}
