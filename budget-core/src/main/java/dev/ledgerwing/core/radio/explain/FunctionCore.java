package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The smallest set of functions that do not fit. Those that could share count, since what has a channel to itself only leaves
 * fewer for them. Sets are tried by increasing size as far as that is bounded; beyond, one function after the other is
 * dropped, the last of the record first.
 */
final class FunctionCore {

    /** How many small sets are tried at most; fewer where a single one takes longer. */
    private static final int MOST_SETS = 600;

    /** Functions times phases of a radio whose sets are small. */
    private static final int SMALL = 200;

    private final ChannelProblem problem;
    private final List<String> settled = new ArrayList<>();
    private final List<String> sharing = new ArrayList<>();

    private FunctionCore(ChannelProblem problem) {
        this.problem = problem;
        Set<String> pinned = problem.radio().channels().stream()
                .filter(Channel::pinned)
                .flatMap(channel -> channel.functions().stream())
                .collect(Collectors.toSet());
        for (RadioFunction function : problem.radio().functions()) {
            (function.mayShare() && !pinned.contains(function.code()) ? sharing : settled).add(function.code());
        }
    }

    /** @param problem one that does not fit */
    static ChannelProblem of(ChannelProblem problem) {
        return new FunctionCore(problem).smallest();
    }

    /** Codes of functions that do not fit and of which none can be left out; seldom the smallest such set, but soon found. */
    static List<String> irreducible(ChannelProblem problem) {
        FunctionCore core = new FunctionCore(problem);
        List<String> few = core.dropping(core.sharing, core.settled);
        List<String> all = new ArrayList<>(core.dropping(core.settled, few));
        all.addAll(few);
        return all;
    }

    private ChannelProblem smallest() {
        List<String> few = dropping(sharing, settled);
        List<String> fewer = fewerThan(few.size());
        List<String> smallest = fewer == null ? few : fewer;
        List<String> left = new ArrayList<>(dropping(settled, smallest));
        left.addAll(smallest);
        return FewerFunctions.kept(problem, left);
    }

    private @Nullable List<String> fewerThan(int most) {
        long sets = 0;
        List<String> found = null;
        for (int size = 0; size < most && found == null; size++) {
            sets += sets(sharing.size(), size);
            if (sets * Math.max(1, problem.phases().size() * sharing.size() / SMALL) > MOST_SETS) {
                return null;
            }
            found = ofSize(size, 0, new ArrayList<>());
        }
        return found;
    }

    /** How many sets of a size there are: the binomial coefficient. */
    private static long sets(int of, int size) {
        long number = 1;
        for (int i = 1; i <= size; i++) {
            number = number * (of - size + i) / i;
        }
        return number;
    }

    private List<String> dropping(List<String> candidates, List<String> others) {
        List<String> left = new ArrayList<>(candidates);
        for (int i = candidates.size() - 1; i >= 0; i--) {
            String dropped = left.remove(i);
            if (!breaks(left, others)) {
                left.add(i, dropped);
            }
        }
        return left;
    }

    private @Nullable List<String> ofSize(int size, int from, List<String> chosen) {
        if (chosen.size() == size) {
            return breaks(chosen, settled) ? List.copyOf(chosen) : null;
        }
        for (int i = from; i <= sharing.size() - (size - chosen.size()); i++) {
            chosen.add(sharing.get(i));
            List<String> found = ofSize(size, i + 1, chosen);
            chosen.remove(chosen.size() - 1);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private boolean breaks(List<String> some, List<String> others) {
        List<String> both = new ArrayList<>(some);
        both.addAll(others);
        return Core.breaks(FewerFunctions.kept(problem, both));
    }
}
