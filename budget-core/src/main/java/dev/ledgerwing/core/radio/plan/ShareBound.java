package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;

/**
 * The least shared weight of functions if all of them could be together: how far down the weight of a plan can go at best.
 * A group of n functions with the weights w costs (n - 1) times the sum of w.
 */
final class ShareBound {

    private final int[][][] least;
    private final int heavy;
    private final int light;

    /** At most so many groups of so many functions that weigh most, and so many that weigh 1. */
    ShareBound(int groups, int heavy, int light) {
        this.heavy = heavy;
        this.light = light;
        least = new int[groups + 1][][];
        least[0] = filled();
        least[0][0][0] = 0;
        for (int group = 1; group <= groups; group++) {
            least[group] = withOneMore(least[group - 1]);
        }
    }

    static final int HEAVY = 3;
    static final int NEVER = Integer.MAX_VALUE / 4;

    /** How much a function weighs in each pair on one channel. */
    static int weight(RadioFunction function) {
        return function.criticality() == Criticality.CONVENIENCE ? 1 : HEAVY;
    }

    private int[][] filled() {
        int[][] table = new int[heavy + 1][light + 1];
        for (int[] row : table) {
            java.util.Arrays.fill(row, NEVER);
        }
        return table;
    }

    private int[][] withOneMore(int[][] fewer) {
        int[][] table = filled();
        for (int a = 0; a <= heavy; a++) {
            for (int b = 0; b <= light; b++) {
                table[a][b] = best(fewer, a, b);
            }
        }
        return table;
    }

    private static int best(int[][] fewer, int a, int b) {
        int best = NEVER;
        for (int x = 0; x <= a; x++) {
            for (int y = 0; y <= b; y++) {
                best = Math.min(best, cost(x, y) + fewer[a - x][b - y]);
            }
        }
        return best;
    }

    /** What a group of so many costs. */
    static int cost(int heavy, int light) {
        int size = heavy + light;
        return size == 0 ? 0 : (size - 1) * (HEAVY * heavy + light);
    }

    /** For so many groups at most. */
    int least(int groups, int heavies, int lights) {
        return least[groups][heavies][lights];
    }
}
