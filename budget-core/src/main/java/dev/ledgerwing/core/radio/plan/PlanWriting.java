package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Writes a plan down as channels: their numbers, what moves them, and the states along the pulse. */
final class PlanWriting {

    private final ChannelProblem problem;
    private final List<Draft> drafts;
    private final int[] numbers;
    private final Stock all;

    private PlanWriting(ChannelProblem problem, List<Draft> drafts) {
        this.problem = problem;
        this.drafts = drafts;
        numbers = Numbering.of(drafts, problem.radio().channels(), channels(problem));
        all = Stock.of(problem.stepping());
    }

    static List<Channel> channels(ChannelProblem problem, List<Draft> drafts) {
        PlanWriting writing = new PlanWriting(problem, drafts);
        List<@Nullable Control> controls = writing.controls();
        List<Channel> channels = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            channels.add(writing.channel(i, controls.get(i)));
        }
        channels.sort(Comparator.comparingInt(Channel::number));
        return channels;
    }

    private static int channels(ChannelProblem problem) {
        RadioLink link = problem.radio().link();
        return link == null ? RadioLink.MOST_CHANNELS : link.channels();
    }

    private List<@Nullable Control> controls() {
        List<@Nullable Control> controls = new ArrayList<>();
        drafts.forEach(draft -> controls.add(draft.control()));
        Settled settled = Settled.of(problem);
        List<Integer> stepping = open(true);
        List<Control> switches = ControlChoice.of(
                settled.stock(),
                stepping.stream().map(this::kinds).toList(),
                stepping.stream().map(this::recorded).toList());
        for (int i = 0; i < stepping.size(); i++) {
            controls.set(stepping.get(i), switches.get(i));
        }
        List<Control> free = new ArrayList<>(settled.free());
        List<Integer> moving = open(false);
        for (int i : moving) {
            Control recorded = recorded(i);
            if (recorded != null && free.remove(recorded)) {
                controls.set(i, recorded);
            }
        }
        for (int i : moving) {
            if (controls.get(i) == null) {
                controls.set(i, free.remove(0));
            }
        }
        return controls;
    }

    /** The drafts for which a control is still to be chosen, by number of the channel. */
    private List<Integer> open(boolean switched) {
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            if (draft.control() == null && (switched ? draft.switched() : draft.proportional())) {
                open.add(i);
            }
        }
        open.sort(Comparator.comparingInt(i -> numbers[i]));
        return open;
    }

    private int kinds(int draft) {
        int kinds = 0;
        for (int kind = 0; kind < all.layouts().size(); kind++) {
            kinds |= GroupSearch.states(group(draft), all.layouts().get(kind)) != null ? 1 << kind : 0;
        }
        return kinds;
    }

    private Group group(int draft) {
        return Group.ofAll(CodedRadio.of(problem, drafts.get(draft).functions()));
    }

    /** What moves the channel of this number in the record; for a proportional function, what moves its own. */
    private @Nullable Control recorded(int draft) {
        List<RadioFunction> functions = drafts.get(draft).functions();
        return problem.radio().channels().stream()
                .filter(channel -> drafts.get(draft).switched()
                        ? channel.number() == numbers[draft]
                        : channel.functions().contains(functions.get(0).code()))
                .map(channel -> named(channel.control()))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private @Nullable Control named(@Nullable String code) {
        return problem.radio().controls().stream()
                .filter(control -> control.code().equals(code))
                .findFirst()
                .orElse(null);
    }

    private Channel channel(int draft, @Nullable Control control) {
        Channel pin = drafts.get(draft).pin();
        List<RadioFunction> functions = drafts.get(draft).functions();
        List<Carried> carries = new ArrayList<>();
        List<List<String>> states = states(draft, control);
        for (int i = 0; i < functions.size(); i++) {
            carries.add(new Carried(functions.get(i).code(), states.get(i), null));
        }
        return new Channel(
                numbers[draft], control == null ? null : control.code(), pin != null, withPresets(functions, carries));
    }

    private List<Carried> withPresets(List<RadioFunction> functions, List<Carried> carries) {
        if (LossRule.of(problem.radio().link()) != LossRule.PRESET) {
            return withStoredPresets(carries);
        }
        List<Carried> with = new ArrayList<>();
        for (int i = 0; i < functions.size(); i++) {
            Carried carried = carries.get(i);
            with.add(new Carried(
                    carried.function(), carried.states(), functions.get(i).onSignalLoss()));
        }
        return with;
    }

    /** Where nothing rests on presets, those stored in the receiver stay, as long as their channel can still stand at them. */
    private List<Carried> withStoredPresets(List<Carried> carries) {
        List<String> codes = carries.stream().map(Carried::function).toList();
        Map<String, String> stored = problem.radio().channels().stream()
                .filter(channel -> Set.copyOf(channel.functions()).equals(Set.copyOf(codes)))
                .flatMap(channel -> channel.carries().stream())
                .filter(before -> before.presetState() != null)
                .collect(Collectors.toMap(
                        Carried::function,
                        before -> Objects.requireNonNull(before.presetState()),
                        (one, other) -> one));
        int positions = carries.get(0).states().size();
        boolean stands = positions == 0
                || IntStream.range(0, positions)
                        .anyMatch(position -> carries.stream().allMatch(carried -> {
                            String state = carried.states().get(position);
                            return state.equals(stored.getOrDefault(carried.function(), state));
                        }));
        return !stands
                ? carries
                : carries.stream()
                        .map(each -> new Carried(each.function(), each.states(), stored.get(each.function())))
                        .toList();
    }

    private List<List<String>> states(int draft, @Nullable Control control) {
        List<RadioFunction> functions = drafts.get(draft).functions();
        if (!drafts.get(draft).switched() || control == null) {
            return functions.stream().map(function -> List.<String>of()).toList();
        }
        Layout layout = all.layouts().get(all.kind(control));
        Group group = group(draft);
        int[][] states = RecordedStates.of(problem, functions, group, layout);
        int[][] chosen = states != null ? states : Objects.requireNonNull(GroupSearch.states(group, layout));
        List<List<String>> named = new ArrayList<>();
        for (int i = 0; i < functions.size(); i++) {
            List<String> all = functions.get(i).states();
            named.add(java.util.Arrays.stream(chosen[i]).mapToObj(all::get).toList());
        }
        return named;
    }
}
