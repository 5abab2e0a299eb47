package dev.ledgerwing.core.radio.plan;

import java.util.ArrayList;
import java.util.List;

/** Those requirements of a group that do not follow from another one. */
final class Needed {

    private final Group group;

    private Needed(Group group) {
        this.group = group;
    }

    /** A position that gives a narrower requirement gives a wider one, where it may be chosen in the phase of that too. */
    static List<Requirement> of(Group group) {
        Needed needed = new Needed(group);
        List<Requirement> kept = new ArrayList<>();
        for (Requirement one : group.requirements()) {
            if (kept.stream().noneMatch(other -> needed.covers(other, one))) {
                kept.removeIf(other -> needed.covers(one, other));
                kept.add(one);
            }
        }
        return kept;
    }

    private boolean covers(Requirement narrow, Requirement wide) {
        if (group.limited(wide.phase()) && narrow.phase() != wide.phase()) {
            return false;
        }
        for (int i = 0; i < group.size(); i++) {
            if ((narrow.accepted(i) & ~wide.accepted(i)) != 0) {
                return false;
            }
        }
        return true;
    }

    /** So many positions are needed at least: as many as there are requirements of which no two can be on one. */
    static int leastPositions(Group group, List<Requirement> requirements) {
        int least = 1;
        for (Requirement first : requirements) {
            List<Requirement> apart = new ArrayList<>(List.of(first));
            for (Requirement next : requirements) {
                if (apart.stream().allMatch(each -> clash(group, each, next))) {
                    apart.add(next);
                }
            }
            least = Math.max(least, apart.size());
        }
        return least;
    }

    private static boolean clash(Group group, Requirement one, Requirement other) {
        for (int i = 0; i < group.size(); i++) {
            if ((one.accepted(i) & other.accepted(i)) == 0) {
                return true;
            }
        }
        return false;
    }
}
