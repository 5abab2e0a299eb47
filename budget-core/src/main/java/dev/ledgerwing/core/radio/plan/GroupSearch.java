package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Whether and how a group is carried by the positions of a control: depth first over which requirement is on which position,
 * the requirement with the fewest places left before the others. What led nowhere once is not tried again, nor read from the
 * other end of the pulse. Exact.
 *
 * <p>A plain switch begins without any level and gets them one by one, each at any place along the pulse; positions that are
 * left in the end repeat the last one, which nothing crosses. A mix, and a switch that moves a servo, which tells every
 * position from the next, begin with all.
 */
final class GroupSearch {

    private final Group group;
    private final Set<Trodden> hopeless = new HashSet<>();

    private GroupSearch(Group group) {
        this.group = group;
    }

    /** The state of each member at each position, by member; null where the group cannot be carried so. */
    static int @Nullable [][] states(Group group, Layout layout) {
        if (group.apart() > layout.positions()) {
            return null;
        }
        List<Requirement> needed = Needed.of(group);
        if (Needed.leastPositions(group, needed) > layout.positions()) {
            return null;
        }
        boolean allAtOnce = !layout.plain() || group.has(DecodedBy.SERVO);
        Levels levels = Levels.open(group, layout, allAtOnce ? layout.positions() : 0);
        int[][] states = new GroupSearch(group).from(levels, needed);
        return states == null ? null : filled(states, layout.positions());
    }

    /** Whether the group is carried by positions with exactly these states, by member and position. */
    static boolean carries(Group group, Layout layout, int[][] states) {
        int[][] accepted = new int[layout.positions()][group.size()];
        for (int level = 0; level < accepted.length; level++) {
            for (int i = 0; i < group.size(); i++) {
                accepted[level][i] = 1 << states[i][level];
            }
        }
        return new GroupSearch(group).from(Levels.of(group, layout, accepted), Needed.of(group)) != null;
    }

    private int @Nullable [][] from(Levels levels, List<Requirement> needed) {
        return levels.states() == null ? null : search(levels, needed);
    }

    private int @Nullable [][] search(Levels levels, List<Requirement> all) {
        List<Requirement> left = new ArrayList<>(all.size());
        Requirement next = null;
        int fewest = Integer.MAX_VALUE;
        for (Requirement requirement : all) {
            if (!given(levels, requirement)) {
                left.add(requirement);
                int places = places(levels, requirement);
                if (places < fewest) {
                    fewest = places;
                    next = requirement;
                }
            }
        }
        if (next == null) {
            return levels.count() == 0 ? search(levels.inserted(0), all) : levels.states();
        }
        left.remove(next);
        return fewest == 0 ? null : tried(levels, next, left);
    }

    private boolean given(Levels levels, Requirement requirement) {
        for (int level = 0; level < levels.count(); level++) {
            if (levels.gives(level, requirement)) {
                return true;
            }
        }
        return false;
    }

    private int places(Levels levels, Requirement requirement) {
        int places = levels.full() ? 0 : newPlaces(levels);
        for (int level = 0; level < levels.count(); level++) {
            places += levels.couldGive(level, requirement) ? 1 : 0;
        }
        return places;
    }

    private int newPlaces(Levels levels) {
        return group.anyOrderDoes() ? 1 : levels.count() + 1;
    }

    private int @Nullable [][] tried(Levels levels, Requirement next, List<Requirement> left) {
        for (int level = 0; level < levels.count(); level++) {
            if (levels.couldGive(level, next)) {
                int[][] states = descend(levels.placed(next, level), left);
                if (states != null) {
                    return states;
                }
            }
        }
        for (int fresh = 0; !levels.full() && fresh < newPlaces(levels); fresh++) {
            int place = levels.count() - fresh;
            int[][] states = descend(levels.inserted(place).placed(next, place), left);
            if (states != null) {
                return states;
            }
        }
        return null;
    }

    private int @Nullable [][] descend(Levels levels, List<Requirement> left) {
        group.radio().effort().spend(1 + group.size() / 8);
        if (levels.states() == null) {
            return null;
        }
        Trodden key = levels.eitherWay();
        if (hopeless.contains(key)) {
            return null;
        }
        int[][] states = search(levels, left);
        if (states == null) {
            group.radio().effort().spend(Effort.TO_REMEMBER + group.size());
            hopeless.add(key);
        }
        return states;
    }

    private static int[][] filled(int[][] states, int positions) {
        int[][] filled = new int[states.length][positions];
        for (int i = 0; i < filled.length; i++) {
            for (int level = 0; level < positions; level++) {
                filled[i][level] = states[i][Math.min(level, states[i].length - 1)];
            }
        }
        return filled;
    }
}
