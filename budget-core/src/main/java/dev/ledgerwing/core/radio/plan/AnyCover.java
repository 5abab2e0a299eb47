package dev.ledgerwing.core.radio.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Whether functions can be split into so many groups: group by group, each as large as it can be, for what carries a group
 * carries every part of it. Exact.
 */
final class AnyCover {

    private final CoverTask task;
    private final int most;
    private final Set<Open> hopeless = new HashSet<>();
    private final List<Integer> kinds;

    private AnyCover(CoverTask task, int most) {
        this.task = task;
        this.most = most;
        kinds = new ArrayList<>(task.alone());
    }

    static boolean exists(CoverTask task, int most) {
        return most >= 0 && task.stock().serves(task.alone()) && new AnyCover(task, most).covers(task.functions());
    }

    private boolean covers(BitSet left) {
        if (left.isEmpty()) {
            return true;
        }
        int open = most - (kinds.size() - task.alone().size());
        if (task.table().strangers(left) > open) {
            return false;
        }
        Open state = Open.of(left, kinds);
        if (hopeless.contains(state)) {
            return false;
        }
        BitSet group = new BitSet();
        group.set(task.table().mostPressed(left));
        BitSet candidates = (BitSet) left.clone();
        candidates.and(task.table().partners(group.nextSetBit(0)));
        boolean found = grows(group, candidates, new BitSet(), left);
        if (!found) {
            task.table().radio().effort().spend(Effort.TO_REMEMBER);
            hopeless.add(state);
        }
        return found;
    }

    /** With the first candidate, and without it. */
    private boolean grows(BitSet group, BitSet candidates, BitSet passed, BitSet left) {
        task.table().radio().effort().spend(1);
        int next = candidates.nextSetBit(0);
        if (next < 0) {
            return isLargest(group, passed) && taken(group, left);
        }
        BitSet fewer = (BitSet) candidates.clone();
        fewer.clear(next);
        BitSet larger = (BitSet) group.clone();
        larger.set(next);
        if (task.table().kinds(larger) != 0) {
            BitSet partners = (BitSet) fewer.clone();
            partners.and(task.table().partners(next));
            BitSet still = (BitSet) passed.clone();
            still.and(task.table().partners(next));
            if (grows(larger, partners, still, left)) {
                return true;
            }
        }
        BitSet more = (BitSet) passed.clone();
        more.set(next);
        return grows(group, fewer, more, left);
    }

    /** Whether no function that was passed over could come along without narrowing what carries the group. */
    private boolean isLargest(BitSet group, BitSet passed) {
        int carrying = task.table().kinds(group);
        BitSet larger = (BitSet) group.clone();
        for (int f = passed.nextSetBit(0); f >= 0; f = passed.nextSetBit(f + 1)) {
            larger.set(f);
            if (task.table().kinds(larger) == carrying) {
                return false;
            }
            larger.clear(f);
        }
        return carrying != 0;
    }

    private boolean taken(BitSet group, BitSet left) {
        kinds.add(task.table().kinds(group));
        BitSet rest = (BitSet) left.clone();
        rest.andNot(group);
        boolean found = task.stock().serves(kinds) && covers(rest);
        kinds.remove(kinds.size() - 1);
        return found;
    }
}
