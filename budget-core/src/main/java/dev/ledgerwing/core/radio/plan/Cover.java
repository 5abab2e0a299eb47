package dev.ledgerwing.core.radio.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Splits functions into groups of the least shared weight: group by group, with a target that rises from the least imaginable
 * weight to the first that can be had. What the functions left must cost is known from what could not be had before. Exact.
 */
final class Cover {

    private final CoverTask task;
    private final ShareBound bound;
    private final Map<Open, Integer> known = new HashMap<>();
    private final List<BitSet> groups = new ArrayList<>();
    private final List<Integer> kinds;
    private final AtomicInteger most;
    private final AtomicInteger target = new AtomicInteger();
    private final AtomicInteger beyond = new AtomicInteger();

    private Cover(CoverTask task, int most) {
        this.task = task;
        this.most = new AtomicInteger(most);
        int heavy = heavies(task.functions());
        bound = new ShareBound(most, heavy, task.functions().cardinality() - heavy);
        kinds = new ArrayList<>(task.alone());
    }

    /** The split into at most so many groups of the least shared weight, then of the fewest groups; null = there is none. */
    static @Nullable List<BitSet> best(CoverTask task, int most) {
        int enough = Math.min(most, task.functions().cardinality());
        return AnyCover.exists(task, enough) ? new Cover(task, enough).best() : null;
    }

    private List<BitSet> best() {
        while (!found()) {
            target.set(Math.max(target.get() + 1, beyond.get()));
        }
        List<BitSet> best = copied();
        while (foundWithFewer(best.size())) {
            best = copied();
        }
        return best;
    }

    private boolean foundWithFewer(int groups) {
        most.set(groups - 1);
        known.clear();
        return groups > 0 && found();
    }

    private List<BitSet> copied() {
        return groups.stream().map(group -> (BitSet) group.clone()).toList();
    }

    private boolean found() {
        groups.clear();
        kinds.subList(task.alone().size(), kinds.size()).clear();
        beyond.set(ShareBound.NEVER);
        return descend(task.functions(), 0);
    }

    private boolean descend(BitSet left, int spent) {
        if (left.isEmpty()) {
            return true;
        }
        Open state = Open.of(left, kinds);
        int heavy = heavies(left);
        int imaginable = bound.least(most.get() - groups.size(), heavy, left.cardinality() - heavy);
        int rest = Math.max(imaginable, known.getOrDefault(state, 0));
        if (spent + rest > target.get()) {
            beyond.accumulateAndGet(spent + rest, Math::min);
            return false;
        }
        BitSet group = new BitSet();
        int first = task.table().mostPressed(left);
        group.set(first);
        BitSet candidates = (BitSet) left.clone();
        candidates.and(task.table().partners(first));
        boolean found = grow(group, candidates, left, spent);
        if (!found) {
            task.table().radio().effort().spend(Effort.TO_REMEMBER);
            known.put(state, target.get() - spent + 1);
        }
        return found;
    }

    private boolean grow(BitSet group, BitSet candidates, BitSet left, int spent) {
        task.table().radio().effort().spend(1 + left.cardinality() / 8); // what a promise takes to work out
        if (!promises(group, left, spent) || task.table().kinds(group) == 0) {
            return false;
        }
        for (int f = candidates.nextSetBit(0); f >= 0; f = candidates.nextSetBit(f + 1)) {
            BitSet larger = (BitSet) group.clone();
            larger.set(f);
            BitSet later = candidates.get(0, candidates.length());
            later.clear(0, f + 1);
            later.and(task.table().partners(f));
            if (grow(larger, later, left, spent)) {
                return true;
            }
        }
        return taken(group, left, spent + cost(group));
    }

    private boolean taken(BitSet group, BitSet left, int spent) {
        groups.add(group);
        kinds.add(task.table().kinds(group));
        BitSet rest = (BitSet) left.clone();
        rest.andNot(group);
        if (task.stock().serves(kinds) && descend(rest, spent)) {
            return true;
        }
        groups.remove(groups.size() - 1);
        kinds.remove(kinds.size() - 1);
        return false;
    }

    /** Whether the group, as it is or with any functions more, could be part of a split within the target. */
    private boolean promises(BitSet group, BitSet left, int spent) {
        int inHeavy = heavies(group);
        int inLight = group.cardinality() - inHeavy;
        int heavy = heavies(left) - inHeavy;
        int light = left.cardinality() - inLight - inHeavy - heavy;
        int least = ShareBound.NEVER;
        for (int a = 0; a <= heavy; a++) {
            for (int b = 0; b <= light; b++) {
                int rest = bound.least(most.get() - groups.size() - 1, heavy - a, light - b);
                least = Math.min(least, ShareBound.cost(inHeavy + a, inLight + b) + rest);
            }
        }
        if (spent + least > target.get()) {
            beyond.accumulateAndGet(spent + least, Math::min);
            return false;
        }
        return true;
    }

    private int cost(BitSet group) {
        int heavy = heavies(group);
        return ShareBound.cost(heavy, group.cardinality() - heavy);
    }

    private int heavies(BitSet functions) {
        int heavies = 0;
        for (int f = functions.nextSetBit(0); f >= 0; f = functions.nextSetBit(f + 1)) {
            heavies += ShareBound.weight(task.table().radio().function(f)) == ShareBound.HEAVY ? 1 : 0;
        }
        return heavies;
    }
}
