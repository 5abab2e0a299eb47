package dev.ledgerwing.core.outputs.bank;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Devices spread over banks with room for so many each, at the least total cost: successive shortest paths in the bipartite graph of
 * devices and banks (R. K. Ahuja, T. L. Magnanti, J. B. Orlin, Network Flows, 1993, section 9.7). A device may stay without a bank.
 */
final class Distribution {

    private static final int NONE = -1;

    private final long[][] costs;
    private final int[] room;
    private final int[] bankOf;
    private final AtomicLong steps = new AtomicLong();

    /** @param costs by bank and device; {@link BankChoice#CANNOT} where there is no way */
    private Distribution(long[][] costs, int[] room, int devices) {
        this.costs = costs;
        this.room = room.clone();
        this.bankOf = new int[devices];
        Arrays.fill(bankOf, NONE);
    }

    static Distribution of(long[][] costs, int[] room, int devices) {
        Distribution distribution = new Distribution(costs, room, devices);
        for (int device = 0; device < devices; device++) {
            distribution.place(device);
        }
        return distribution;
    }

    /** The bank of each device; negative for none. */
    int[] bankOf() {
        return bankOf;
    }

    long cost() {
        long total = 0;
        for (int device = 0; device < bankOf.length; device++) {
            total += bankOf[device] == NONE ? BankChoice.LEFT : costs[bankOf[device]][device];
        }
        return total;
    }

    /** How much work it was: links between a device and a bank that were looked at. */
    long steps() {
        return steps.get();
    }

    int placed() {
        return (int) Arrays.stream(bankOf).filter(bank -> bank != NONE).count();
    }

    /**
     * Gives one more device a bank, or none, by the cheapest chain of moves: distances to every bank by Bellman and Ford, since
     * a move may save as well as cost. A chain ends in a bank with room, or with a device that is left over instead.
     */
    private void place(int device) {
        int banks = room.length;
        steps.addAndGet(banks);
        long[] distance = new long[banks];
        int[] lastMoved = new int[banks];
        for (int bank = 0; bank < banks; bank++) {
            distance[bank] = costs[bank][device];
            lastMoved[bank] = device;
        }
        boolean shorter = true;
        while (shorter) {
            shorter = false;
            steps.addAndGet((long) device * banks);
            for (int moved = 0; moved < device; moved++) {
                shorter |= relax(moved, distance, lastMoved);
            }
        }
        long best = BankChoice.LEFT;
        int end = NONE;
        int leftOver = device;
        for (int bank = 0; bank < banks; bank++) {
            if (room[bank] > 0 && distance[bank] < best) {
                best = distance[bank];
                end = bank;
                leftOver = NONE;
            }
        }
        for (int other = 0; other < device; other++) {
            int from = bankOf[other];
            if (from != NONE && distance[from] != BankChoice.CANNOT) {
                long cost = distance[from] - costs[from][other] + BankChoice.LEFT;
                if (cost < best) {
                    best = cost;
                    end = from;
                    leftOver = other;
                }
            }
        }
        if (leftOver == device) {
            return;
        }
        if (leftOver == NONE) {
            room[end]--;
        } else {
            bankOf[leftOver] = NONE;
        }
        follow(device, end, lastMoved);
    }

    private boolean relax(int moved, long[] distance, int[] lastMoved) {
        int from = bankOf[moved];
        boolean shorter = false;
        if (from == NONE || distance[from] == BankChoice.CANNOT) {
            return false;
        }
        for (int to = 0; to < room.length; to++) {
            if (to != from && costs[to][moved] != BankChoice.CANNOT) {
                long longer = distance[from] - costs[from][moved] + costs[to][moved];
                if (longer < distance[to]) {
                    distance[to] = longer;
                    lastMoved[to] = moved;
                    shorter = true;
                }
            }
        }
        return shorter;
    }

    private void follow(int device, int end, int[] lastMoved) {
        int bank = end;
        while (true) {
            int moved = lastMoved[bank];
            int from = bankOf[moved];
            bankOf[moved] = bank;
            if (moved == device) {
                return;
            }
            bank = from;
        }
    }
}
