package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.radio.plan.Group.Limit;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The levels of a channel along the pulse while requirements are put on them: which states each may still have, and by which
 * levels each phase is served.
 *
 * <p>Sets of levels are bits, counted along the pulse. Given which requirement is on which level, every function is by itself:
 * it needs a way along the pulse through the states that are accepted at each level.
 */
final class Levels {

    private final Group group;
    private final Layout layout;
    private final int[][] fixed;
    private final int[] serving;

    private Levels(Group group, Layout layout, int[][] fixed, int[] serving) {
        this.group = group;
        this.layout = layout;
        this.fixed = fixed;
        this.serving = serving;
    }

    /** Levels of which each may have any state of those given. */
    static Levels of(Group group, Layout layout, int[][] accepted) {
        return new Levels(group, layout, accepted, new int[group.radio().phases()]);
    }

    /** So many levels on which nothing is asked yet. */
    static Levels open(Group group, Layout layout, int levels) {
        int[][] accepted = new int[levels][];
        Arrays.setAll(accepted, level -> openLevel(group));
        return of(group, layout, accepted);
    }

    private static int[] openLevel(Group group) {
        int[] accepted = new int[group.size()];
        Arrays.setAll(accepted, i -> group.radio().all(group.member(i)));
        return accepted;
    }

    int count() {
        return fixed.length;
    }

    boolean full() {
        return count() == layout.positions();
    }

    /** Whether the level is chosen in the phase of the requirement already, or may be freely, and has what it asks. */
    boolean gives(int level, Requirement requirement) {
        boolean free = !group.limited(requirement.phase()) || ((serving[requirement.phase()] >> level) & 1) != 0;
        return free && every(level, requirement, true);
    }

    /** Whether the level by itself could still give it. */
    boolean couldGive(int level, Requirement requirement) {
        return every(level, requirement, false);
    }

    private boolean every(int level, Requirement requirement, boolean surely) {
        int[] accepted = fixed[level];
        for (int i = 0; i < accepted.length; i++) {
            int common = accepted[i] & requirement.accepted(i);
            if (surely ? common != accepted[i] : common == 0) {
                return false;
            }
        }
        return true;
    }

    Levels placed(Requirement requirement, int level) {
        int[][] changed = fixed.clone();
        changed[level] = changed[level].clone();
        for (int i = 0; i < group.size(); i++) {
            changed[level][i] &= requirement.accepted(i);
        }
        int[] served = serving.clone();
        served[requirement.phase()] |= 1 << level;
        return new Levels(group, layout, changed, served);
    }

    /** With one more level at a place along the pulse. */
    Levels inserted(int place) {
        int[][] changed = new int[count() + 1][];
        System.arraycopy(fixed, 0, changed, 0, place);
        changed[place] = openLevel(group);
        System.arraycopy(fixed, place, changed, place + 1, count() - place);
        int below = (1 << place) - 1;
        int[] shifted = Arrays.stream(serving)
                .map(set -> (set & below) | ((set & ~below) << 1))
                .toArray();
        return new Levels(group, layout, changed, shifted);
    }

    /** The state of each member at each level, by member; null where there is no way along the pulse. */
    int @Nullable [][] states() {
        int[][] accepted = accepted();
        return group.radio().presets() ? PresetLevel.ways(group, accepted) : ways(group, accepted);
    }

    /**
     * What is asked of each level and by which levels each phase is served where that matters, the same for levels that are
     * the same read from the other end.
     */
    Trodden eitherWay() {
        return Trodden.ofEither(written(false), written(true));
    }

    private int[] written(boolean fromTheEnd) {
        int members = group.size();
        int[] written = new int[count() * members + serving.length];
        for (int level = 0; level < count(); level++) {
            int from = fromTheEnd ? count() - 1 - level : level;
            System.arraycopy(fixed[from], 0, written, level * members, members);
        }
        for (int phase = 0; phase < serving.length; phase++) {
            int set = group.limited(phase) ? serving[phase] : 0;
            boolean turned = fromTheEnd && set != 0;
            written[count() * members + phase] = turned ? Integer.reverse(set) >>> (Integer.SIZE - count()) : set;
        }
        return written;
    }

    private static int @Nullable [][] ways(Group group, int[][] accepted) {
        int[][] ways = new int[accepted.length][];
        for (int i = 0; i < ways.length; i++) {
            int[] way = PulseLine.through(accepted[i], group.decoder(i));
            if (way == null) {
                return null;
            }
            ways[i] = way;
        }
        return ways;
    }

    /** By member and level: what its requirements and the ways across it leave. */
    private int[][] accepted() {
        int[][] accepted = new int[group.size()][count()];
        for (int i = 0; i < accepted.length; i++) {
            for (int level = 0; level < count(); level++) {
                accepted[i][level] = fixed[level][i];
            }
        }
        for (Limit limit : group.limits()) {
            int crossed = layout.crossed(serving[limit.one()], serving[limit.other()]);
            for (int left = crossed; left != 0; left &= left - 1) {
                int level = Integer.numberOfTrailingZeros(left);
                for (int i = 0; i < accepted.length; i++) {
                    accepted[i][level] &= limit.accepted(i);
                }
            }
        }
        return accepted;
    }
}
