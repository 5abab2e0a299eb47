package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelFault.Kind;
import dev.ledgerwing.core.radio.plan.Effort.TooManyCombinations;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The faults of the states that are recorded for every position of a channel. */
final class StatesCheck {

    private final Channel channel;
    private final Layout layout;
    private final Group group;
    private final int[][] states;
    private final List<ChannelFault> faults = new ArrayList<>();

    private StatesCheck(Channel channel, Layout layout, Group group, int[][] states) {
        this.channel = channel;
        this.layout = layout;
        this.group = group;
        this.states = states;
    }

    static List<ChannelFault> of(
            ChannelProblem problem, Channel channel, List<RadioFunction> functions, Layout layout) {
        try {
            return searched(problem, channel, functions, layout);
        } catch (TooManyCombinations searchedInVain) {
            return List.of(ChannelFault.of(Kind.NOT_DECIDED, channel.number(), channel.functions()));
        }
    }

    private static List<ChannelFault> searched(
            ChannelProblem problem, Channel channel, List<RadioFunction> functions, Layout layout) {
        Group group = Group.ofAll(CodedRadio.of(problem, functions));
        StatesCheck check = new StatesCheck(channel, layout, group, RecordedStates.of(channel, functions));
        check.decoders();
        check.requirements();
        if (check.faults.isEmpty()) {
            check.loss();
            check.ways();
        }
        return check.faults;
    }

    private void decoders() {
        for (int i = 0; i < group.size(); i++) {
            if (PulseLine.through(bits(i), group.decoder(i)) == null) {
                List<String> named = List.of(group.radio().function(i).code());
                faults.add(ChannelFault.of(Kind.DECODER, channel.number(), named));
            }
        }
    }

    private int[] bits(int member) {
        return Arrays.stream(states[member]).map(state -> 1 << state).toArray();
    }

    private void requirements() {
        for (Requirement requirement : group.requirements()) {
            if (positions(position -> reaches(position, requirement)).isEmpty()) {
                add(Kind.NOT_REACHABLE, requirement.phase(), demanded(requirement), null);
            } else if (positions(position -> gives(position, requirement)).isEmpty()) {
                add(Kind.LOSS_STATE, requirement.phase(), demanded(requirement), null);
            }
        }
    }

    private List<Integer> positions(IntPredicate which) {
        return IntStream.range(0, layout.positions()).filter(which).boxed().toList();
    }

    /** What is asked when the signal is lost is left aside. */
    private boolean reaches(int position, Requirement requirement) {
        return every(i -> {
            int demanded = requirement.demanded(i);
            int accepted = demanded != 0 ? demanded : group.radio().may(requirement.phase(), i);
            return ((accepted >> states[i][position]) & 1) != 0;
        });
    }

    private boolean gives(int position, Requirement requirement) {
        return every(i -> ((requirement.accepted(i) >> states[i][position]) & 1) != 0);
    }

    private boolean every(IntPredicate holds) {
        return IntStream.range(0, group.size()).allMatch(holds);
    }

    private void loss() {
        int[][] accepted = new int[group.size()][];
        Arrays.setAll(accepted, this::bits);
        if (group.radio().presets() && PresetLevel.ways(group, accepted) == null) {
            add(Kind.LOSS_STATE, -1, wanted(), null);
        }
    }

    /** The smallest part of the flight in which the positions cannot be chosen so that nothing forbidden is crossed. */
    private void ways() {
        if (!faults.isEmpty() || GroupSearch.carries(group, layout, states)) {
            return;
        }
        for (int p = 0; p < group.radio().phases(); p++) {
            crossing(p, p);
        }
        if (faults.isEmpty()) {
            group.radio().successions().forEach(pair -> crossing(pair.one(), pair.other()));
        }
        if (faults.isEmpty()) {
            add(Kind.CROSSES, -1, List.of(), null);
        }
    }

    private void crossing(int p, int q) {
        if (GroupSearch.carries(group.onlyIn(p, q), layout, states)) {
            return;
        }
        for (int position : positions(each -> isBetween(each, p, q))) {
            List<FunctionState> harm = harm(position, p, q);
            if (!harm.isEmpty()) {
                add(Kind.CROSSES, p, harm, position + 1);
                return;
            }
        }
        add(Kind.CROSSES, p, List.of(), null);
    }

    private boolean isBetween(int position, int p, int q) {
        return ((layout.crossed(serving(p), serving(q)) >> position) & 1) != 0;
    }

    /** The first position that gives each combination. */
    private int serving(int phase) {
        int serving = 0;
        for (Requirement requirement : group.requirements()) {
            if (requirement.phase() == phase) {
                serving |=
                        1 << positions(position -> gives(position, requirement)).get(0);
            }
        }
        return serving;
    }

    private List<FunctionState> harm(int position, int p, int q) {
        return IntStream.range(0, group.size())
                .filter(i -> (((group.radio().may(p, i) & group.radio().may(q, i)) >> states[i][position]) & 1) == 0)
                .mapToObj(i -> state(i, states[i][position]))
                .toList();
    }

    private List<FunctionState> demanded(Requirement requirement) {
        return IntStream.range(0, group.size())
                .filter(i -> requirement.demanded(i) != 0)
                .mapToObj(i -> state(i, Integer.numberOfTrailingZeros(requirement.demanded(i))))
                .toList();
    }

    private List<FunctionState> wanted() {
        return IntStream.range(0, group.size())
                .filter(i -> group.radio().lossState(i) >= 0)
                .mapToObj(i -> state(i, group.radio().lossState(i)))
                .toList();
    }

    private FunctionState state(int i, int state) {
        RadioFunction function = group.radio().function(i);
        return new FunctionState(function.code(), function.states().get(state));
    }

    private void add(Kind kind, int phase, List<FunctionState> about, @Nullable Integer position) {
        String code = phase < 0 ? null : group.radio().phase(phase).code();
        List<String> named = about.stream().map(FunctionState::function).toList();
        faults.add(new ChannelFault(kind, channel.number(), code, named, about, position));
    }
}
