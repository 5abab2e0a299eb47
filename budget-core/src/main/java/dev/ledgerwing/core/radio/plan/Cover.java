package dev.ledgerwing.core.radio.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Splits functions into groups that are carried by one control each: branch and bound, exact.
 *
 * <p>The function with the fewest groups left to it goes first; the bound is what the functions left must cost with those that
 * are placed, and among themselves at best.
 */
final class Cover {

    private final CoverTask task;
    private final int most;
    private final boolean anyWillDo;
    private final ShareBound bound;
    private final List<BitSet> groups = new ArrayList<>();
    private final List<Integer> kinds;
    private @Nullable List<BitSet> best;
    private long bestCost = Long.MAX_VALUE;

    private Cover(CoverTask task, int most, boolean anyWillDo) {
        this.task = task;
        this.most = most;
        this.anyWillDo = anyWillDo;
        int heavy = heavies(task.functions());
        bound = new ShareBound(anyWillDo ? 0 : Math.max(0, most), heavy, task.functions().cardinality() - heavy);
        kinds = new ArrayList<>(task.alone());
    }

    /** Any split into at most so many groups; null = there is none. */
    static @Nullable List<BitSet> any(CoverTask task, int most) {
        return new Cover(task, most, true).found();
    }

    /** The split into at most so many groups of the least shared weight, then of the fewest groups; null = there is none. */
    static @Nullable List<BitSet> best(CoverTask task, int most) {
        return new Cover(task, most, false).found();
    }

    private @Nullable List<BitSet> found() {
        if (most >= 0 && task.stock().serves(kinds)) {
            descend((BitSet) task.functions().clone(), 0);
        }
        return best;
    }

    private void descend(BitSet left, int weight) {
        if (left.isEmpty()) {
            keep(weight);
            return;
        }
        if (anyWillDo ? best != null : cost(weight + rest(left), groups.size()) >= bestCost) {
            return;
        }
        int function = mostPressed(left);
        left.clear(function);
        join(function, left, weight);
        left.set(function);
    }

    private void keep(int weight) {
        long cost = cost(weight, groups.size());
        if (cost < bestCost) {
            bestCost = cost;
            best = groups.stream().map(group -> (BitSet) group.clone()).toList();
        }
    }

    private static long cost(int weight, int groups) {
        return ((long) weight << 8) + groups;
    }

    private int mostPressed(BitSet left) {
        int pressed = -1;
        int fewest = Integer.MAX_VALUE;
        for (int f = left.nextSetBit(0); f >= 0; f = left.nextSetBit(f + 1)) {
            int places = 0;
            int strangers = 0;
            for (BitSet group : groups) {
                places += fits(f, group) ? 1 : 0;
            }
            for (int g = left.nextSetBit(0); g >= 0; g = left.nextSetBit(g + 1)) {
                strangers += task.table().partners(f).get(g) ? 0 : 1;
            }
            int rank = places * 1000 - strangers;
            if (rank < fewest) {
                fewest = rank;
                pressed = f;
            }
        }
        return pressed;
    }

    private void join(int function, BitSet left, int weight) {
        if (groups.size() < most) {
            BitSet group = new BitSet();
            group.set(function);
            groups.add(group);
            if (served(group, groups.size() - 1)) {
                descend(left, weight);
            }
            kinds.remove(kinds.size() - 1);
            groups.remove(groups.size() - 1);
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            if (fits(function, groups.get(i))) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingInt(i -> added(function, groups.get(i))));
        for (int i : order) {
            joinGroup(function, i, left, weight);
        }
    }

    private void joinGroup(int function, int i, BitSet left, int weight) {
        BitSet group = groups.get(i);
        int more = added(function, group);
        int before = kinds.get(task.alone().size() + i);
        group.set(function);
        if (served(group, i)) {
            descend(left, weight + more);
        }
        group.clear(function);
        kinds.set(task.alone().size() + i, before);
    }

    private boolean served(BitSet group, int i) {
        int carrying = task.table().kinds(group);
        int place = task.alone().size() + i;
        if (place == kinds.size()) {
            kinds.add(carrying);
        } else {
            kinds.set(place, carrying);
        }
        return carrying != 0 && task.stock().serves(kinds);
    }

    private boolean fits(int function, BitSet group) {
        BitSet partners = task.table().partners(function);
        for (int g = group.nextSetBit(0); g >= 0; g = group.nextSetBit(g + 1)) {
            if (!partners.get(g)) {
                return false;
            }
        }
        return true;
    }

    /** What a function adds to a group: every new pair costs the weights of both. */
    private int added(int function, BitSet group) {
        int weight = 0;
        for (int g = group.nextSetBit(0); g >= 0; g = group.nextSetBit(g + 1)) {
            weight += weight(function) + weight(g);
        }
        return weight;
    }

    /** What the functions left cost at least: each with those that are placed, and all of them among themselves. */
    private int rest(BitSet left) {
        int cost = 0;
        for (int f = left.nextSetBit(0); groups.size() == most && f >= 0; f = left.nextSetBit(f + 1)) {
            int least = ShareBound.NEVER;
            for (BitSet group : groups) {
                if (fits(f, group)) {
                    least = Math.min(least, added(f, group));
                }
            }
            cost = Math.min(ShareBound.NEVER, cost + least);
        }
        int heavy = heavies(left);
        return cost + bound.least(most, heavy, left.cardinality() - heavy);
    }

    private int heavies(BitSet functions) {
        return (int) functions.stream().filter(f -> weight(f) == ShareBound.HEAVY).count();
    }

    private int weight(int function) {
        return ShareBound.weight(task.table().radio().function(function));
    }
}
