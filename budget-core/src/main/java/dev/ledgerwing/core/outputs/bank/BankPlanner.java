package dev.ledgerwing.core.outputs.bank;

import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.outputs.bank.BankPlan.Placing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Finds, exactly, which output drives what: as many devices as possible in a bank of their kind at a rate they bear, then fewest
 * below the rate they want, then fewest moved from the output they hang on, then fewest banks in use.
 *
 * <p>Branch and bound over the settings of the banks. Where some are not chosen yet, every device may take whatever is best for
 * it in them: {@link Distribution} then gives what the rest costs at least. Where there are too many ways to try them all, the best plan
 * found so far stands, and {@link BankPlan#isDecided()} says whether another one could leave fewer devices over.
 */
public final class BankPlanner {

    /** Links between devices and banks that are looked at before the search is given up. */
    private static final long MOST_STEPS = 40_000_000;

    private final List<Device> devices;
    private final List<BankChoice> banks;
    private final @Nullable Integer[] chosen;
    /** One number: the cost of the best plan so far. */
    private final long[] best = {Long.MAX_VALUE};

    private final @Nullable Integer[] bestChosen;
    private final int[] bestBankOf;
    private final AtomicLong steps = new AtomicLong();

    private BankPlanner(List<OutputBank> banks, List<Device> devices) {
        this.devices = devices;
        this.banks = banks.stream().map(bank -> BankChoice.of(bank, devices)).toList();
        this.chosen = new @Nullable Integer[banks.size()];
        this.bestChosen = new @Nullable Integer[banks.size()];
        this.bestBankOf = new int[devices.size()];
    }

    public static BankPlan plan(List<OutputBank> banks, List<Device> devices) {
        List<Device> apart = apart(devices);
        BankPlanner planner = new BankPlanner(banks, apart);
        planner.asRecorded();
        Distribution free = planner.distribution(0);
        planner.search(0, new Step(null, free, free.cost()));
        return planner.written(apart.size() - free.placed());
    }

    /** What is recorded is a plan already, so that nothing worse is ever proposed: every bank as it suits what hangs on it. */
    private void asRecorded() {
        for (int bank = 0; bank < banks.size(); bank++) {
            chosen[bank] = asRecorded(banks.get(bank));
        }
        Distribution all = distribution(banks.size());
        reached(new Step(null, all, all.cost() + BankChoice.BANK * banksAtLeast(banks.size(), all.placed())));
        Arrays.fill(chosen, null);
    }

    private @Nullable Integer asRecorded(BankChoice bank) {
        int[] here = IntStream.range(0, devices.size())
                .filter(device -> devices.get(device).hangsOn(bank.bank()))
                .toArray();
        return here.length == 0
                ? null
                : IntStream.range(0, bank.settings().size())
                        .boxed()
                        .min(Comparator.comparingLong(setting -> bank.cost(setting, here)))
                        .orElse(null);
    }

    private void reached(Step plan) {
        best[0] = plan.bound();
        System.arraycopy(chosen, 0, bestChosen, 0, chosen.length);
        System.arraycopy(plan.rest().bankOf(), 0, bestBankOf, 0, bestBankOf.length);
    }

    /** Of two devices on one output only the first one can keep it. */
    private static List<Device> apart(List<Device> devices) {
        Set<Integer> taken = new HashSet<>();
        return devices.stream()
                .map(device -> device.number() == null || taken.add(device.number()) ? device : device.withNumber(null))
                .toList();
    }

    /** What comes out at least when one bank is set in one way; a setting of null leaves it free. */
    private record Step(@Nullable Integer setting, Distribution rest, long bound) {}

    /** Tries the most promising setting first, since a good plan found early spares the rest. */
    private void search(int bank, Step last) {
        if (bank == banks.size()) {
            reached(last);
            return;
        }
        if (isGivenUp()) {
            return;
        }
        for (Step step : steps(bank)) {
            if (step.bound() < best[0]) {
                chosen[bank] = step.setting();
                search(bank + 1, step);
            }
        }
        chosen[bank] = null;
    }

    private boolean isGivenUp() {
        return steps.get() > MOST_STEPS;
    }

    private List<Step> steps(int bank) {
        List<Step> steps = new ArrayList<>();
        for (int setting = first(bank); setting < banks.get(bank).settings().size(); setting++) {
            steps.add(step(bank, setting));
        }
        steps.add(step(bank, null));
        steps.sort(Comparator.comparingLong(Step::bound));
        return steps;
    }

    private Step step(int bank, @Nullable Integer setting) {
        chosen[bank] = setting;
        Distribution rest = distribution(bank + 1);
        return new Step(setting, rest, rest.cost() + BankChoice.BANK * banksAtLeast(bank + 1, rest.placed()));
    }

    /** Of two equal banks in a row the second one is never set to what comes before the setting of the first one. */
    private int first(int bank) {
        if (bank == 0 || !banks.get(bank).isLike(banks.get(bank - 1))) {
            return 0;
        }
        Integer before = chosen[bank - 1];
        return before == null ? banks.get(bank).settings().size() : before;
    }

    /** The cheapest distribution while the banks from {@code undecided} on may still be set in any way. */
    private Distribution distribution(int undecided) {
        long[][] costs = new long[banks.size()][devices.size()];
        for (int bank = 0; bank < banks.size(); bank++) {
            for (int device = 0; device < devices.size(); device++) {
                costs[bank][device] = bank < undecided
                        ? banks.get(bank).cost(chosen[bank], device)
                        : banks.get(bank).leastCost(device);
            }
        }
        int[] room = banks.stream().mapToInt(BankChoice::capacity).toArray();
        Distribution distribution = Distribution.of(costs, room, devices.size());
        steps.addAndGet(distribution.steps());
        return distribution;
    }

    /** How many banks so many devices take at least: those decided on, and the largest of the others. */
    private int banksAtLeast(int undecided, int placed) {
        int used = 0;
        int room = 0;
        for (int bank = 0; bank < undecided; bank++) {
            if (chosen[bank] != null) {
                used++;
                room += banks.get(bank).capacity();
            }
        }
        int[] others = banks.subList(undecided, banks.size()).stream()
                .mapToInt(BankChoice::capacity)
                .sorted()
                .toArray();
        for (int i = others.length - 1; i >= 0 && room < placed; i--) {
            used++;
            room += others[i];
        }
        return used;
    }

    /** @param leftAtLeast how many are left over even where every device takes what is best for it in every bank */
    private BankPlan written(int leftAtLeast) {
        List<BankSetting> settings = new ArrayList<>();
        Integer[] numbers = new Integer[devices.size()];
        int below = 0;
        for (int bank = 0; bank < banks.size(); bank++) {
            List<Integer> here = here(bank);
            if (!here.isEmpty()) {
                OutputBank set = banks.get(bank).bank();
                BankSetting setting =
                        BankSetting.bestFor(set, here.stream().map(devices::get).toList());
                settings.add(setting);
                below += (int) here.stream()
                        .filter(device -> setting.isSlowFor(devices.get(device)))
                        .count();
                number(here, set, numbers);
            }
        }
        List<Placing> placings = new ArrayList<>();
        List<String> leftOver = new ArrayList<>();
        int moved = 0;
        for (int device = 0; device < numbers.length; device++) {
            Device placed = devices.get(device);
            if (numbers[device] == null) {
                leftOver.add(placed.code());
            } else {
                placings.add(new Placing(placed.code(), numbers[device]));
                moved += placed.number() != null && !placed.number().equals(numbers[device]) ? 1 : 0;
            }
        }
        return new BankPlan(settings, placings, leftOver, below, moved, isGivenUp() ? leftAtLeast : leftOver.size());
    }

    private List<Integer> here(int bank) {
        return IntStream.range(0, bestBankOf.length)
                .filter(device -> bestBankOf[device] == bank)
                .boxed()
                .toList();
    }

    /** Numbers the devices of one bank: who hangs there stays, the others take the lowest ones that are free. */
    private void number(List<Integer> here, OutputBank bank, Integer[] numbers) {
        TreeSet<Integer> free = new TreeSet<>(bank.outputNumbers());
        for (int device : here) {
            Integer kept = devices.get(device).number();
            if (kept != null && free.remove(kept)) {
                numbers[device] = kept;
            }
        }
        for (int device : here) {
            if (numbers[device] == null) {
                numbers[device] = free.pollFirst();
            }
        }
    }
}
