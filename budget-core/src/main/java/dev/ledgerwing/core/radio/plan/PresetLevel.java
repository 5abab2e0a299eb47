package dev.ledgerwing.core.radio.plan;

import org.jspecify.annotations.Nullable;

/**
 * The level to which the receiver jumps when it loses the signal: one of its own somewhere along the pulse, or one of those
 * that the control has. It is never crossed, but the decoders must tell it apart.
 */
final class PresetLevel {

    private final Group group;
    private final int[][] accepted;

    private PresetLevel(Group group, int[][] accepted) {
        this.group = group;
        this.accepted = accepted;
    }

    /** The state of each member at each level of the control, so that the receiver has a level to jump to; null = none. */
    static int @Nullable [][] ways(Group group, int[][] accepted) {
        PresetLevel preset = new PresetLevel(group, accepted);
        int levels = accepted.length == 0 ? 0 : accepted[0].length;
        group.radio().effort().spend(levels * group.size() / 8);
        for (int place = 0; place <= levels; place++) {
            int[][] ways = preset.ways(place, true);
            if (ways != null) {
                return ways;
            }
        }
        for (int level = 0; level < levels; level++) {
            int[][] ways = preset.ways(level, false);
            if (ways != null) {
                return ways;
            }
        }
        return null;
    }

    private int @Nullable [][] ways(int place, boolean own) {
        int[][] ways = new int[group.size()][];
        for (int i = 0; i < ways.length; i++) {
            int[] way = own ? besides(i, place) : at(i, place);
            if (way == null) {
                return null;
            }
            ways[i] = way;
        }
        return ways;
    }

    private int @Nullable [] at(int i, int level) {
        int[] row = accepted[i].clone();
        row[level] &= wanted(i);
        return PulseLine.through(row, group.decoder(i));
    }

    private int @Nullable [] besides(int i, int place) {
        int[] row = accepted[i];
        int[] more = new int[row.length + 1];
        System.arraycopy(row, 0, more, 0, place);
        more[place] = wanted(i);
        System.arraycopy(row, place, more, place + 1, row.length - place);
        int[] way = PulseLine.through(more, group.decoder(i));
        if (way == null) {
            return null;
        }
        int[] less = new int[row.length];
        System.arraycopy(way, 0, less, 0, place);
        System.arraycopy(way, place + 1, less, place, row.length - place);
        return less;
    }

    private int wanted(int i) {
        int state = group.radio().lossState(group.member(i));
        return state < 0 ? group.radio().all(group.member(i)) : 1 << state;
    }
}
