package dev.ledgerwing.core.outputs.bank;

import dev.ledgerwing.core.build.OutputBank;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One bank in the search: how it may be set, and what each device costs in each setting. */
final class BankChoice {

    static final long CANNOT = Long.MAX_VALUE;
    /** One device left over outweighs any number below their wish, one of these any number moved, and so on. */
    static final long LEFT = 1_000_000_000_000L;

    static final long SLOW = 100_000_000L;
    static final long MOVED = 10_000L;
    static final long BANK = 1L;

    private final OutputBank bank;
    private final List<BankSetting> settings;
    private final List<long[]> costs;

    private BankChoice(OutputBank bank, List<BankSetting> settings, List<long[]> costs) {
        this.bank = bank;
        this.settings = settings;
        this.costs = costs;
    }

    /** The settings that no other one beats for every device; {@link #CANNOT} where a device cannot work. */
    static BankChoice of(OutputBank bank, List<Device> devices) {
        List<BankSetting> kept = new ArrayList<>();
        List<long[]> costs = new ArrayList<>();
        for (BankSetting setting : BankSetting.of(bank)) {
            long[] cost =
                    devices.stream().mapToLong(each -> cost(setting, each)).toArray();
            boolean useless = Arrays.stream(cost).allMatch(each -> each == CANNOT);
            if (!useless && costs.stream().noneMatch(other -> beats(other, cost))) {
                drop(kept, costs, cost);
                kept.add(setting);
                costs.add(cost);
            }
        }
        return new BankChoice(bank, kept, costs);
    }

    private static void drop(List<BankSetting> kept, List<long[]> costs, long[] better) {
        for (int i = kept.size() - 1; i >= 0; i--) {
            if (beats(better, costs.get(i))) {
                kept.remove(i);
                costs.remove(i);
            }
        }
    }

    List<BankSetting> settings() {
        return settings;
    }

    OutputBank bank() {
        return bank;
    }

    int capacity() {
        return bank.outputNumbers().size();
    }

    /** What a device costs in a bank that may still be set in any way. */
    long leastCost(int device) {
        return costs.stream().mapToLong(cost -> cost[device]).min().orElse(CANNOT);
    }

    /** What a device costs in a setting; a setting of null is a bank that stays free. */
    long cost(@Nullable Integer setting, int device) {
        return setting == null ? CANNOT : costs.get(setting)[device];
    }

    /** What some devices cost in a setting; what it cannot serve is left over. */
    long cost(int setting, int[] some) {
        return Arrays.stream(some)
                .mapToLong(device -> costs.get(setting)[device])
                .map(cost -> cost == CANNOT ? LEFT : cost)
                .sum();
    }

    /** Whether it makes no difference which of the two a device hangs on. */
    boolean isLike(BankChoice other) {
        return capacity() == other.capacity() && Arrays.deepEquals(costs.toArray(), other.costs.toArray());
    }

    private static boolean beats(long[] one, long[] other) {
        for (int i = 0; i < one.length; i++) {
            if (one[i] > other[i]) {
                return false;
            }
        }
        return true;
    }

    private static long cost(BankSetting setting, Device device) {
        if (!setting.serves(device)) {
            return CANNOT;
        }
        boolean moved = device.number() != null && !device.hangsOn(setting.bank());
        return (setting.isSlowFor(device) ? SLOW : 0) + (moved ? MOVED : 0);
    }
}
