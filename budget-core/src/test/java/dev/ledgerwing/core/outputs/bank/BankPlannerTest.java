package dev.ledgerwing.core.outputs.bank;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BankPlannerTest {

    private static final List<PulseKind> KINDS = List.of(PulseKind.values());

    private static Device servo(String code, @Nullable Integer number, double maxHz, double wantedHz) {
        return new Device(code, number, PulseKind.SERVO_PULSE, maxHz, wantedHz, 2000);
    }

    private static Device lamp(String code) {
        return new Device(code, null, PulseKind.ON_OFF, 100.0, null, 2000);
    }

    private static OutputBank bank(String name, int from, int count, double... ratesHz) {
        return new OutputBank(
                name,
                IntStream.range(from, from + count).boxed().toList(),
                Arrays.stream(ratesHz).boxed().toList(),
                List.of(PulseKind.SERVO_PULSE, PulseKind.ON_OFF));
    }

    @Test
    void twoRatesDoNotShareATimer() {
        // Published hardware documentation: the channels of one timer share their period and differ in the width only.
        List<Device> devices = List.of(servo("slow", null, 60, 50), servo("fast", null, 400, 200));

        BankPlan one = BankPlanner.plan(List.of(bank("A", 1, 4, 50, 200)), devices);
        BankPlan two = BankPlanner.plan(List.of(bank("A", 1, 4, 50, 200), bank("B", 5, 4, 50, 200)), devices);

        assertThat(one.isComplete()).isTrue();
        assertThat(one.belowWish()).isEqualTo(1);
        assertThat(two.belowWish()).isZero();
        assertThat(two.settings()).extracting(BankSetting::rateHz).containsExactlyInAnyOrder(50.0, 200.0);
    }

    @Test
    void kindsOfPulseDoNotMix() {
        BankPlan plan = BankPlanner.plan(
                List.of(bank("A", 1, 4, 50)),
                List.of(servo("a", null, 60, 50), servo("b", null, 60, 50), lamp("lamp")));

        assertThat(plan.leftOver()).containsExactly("lamp");
        assertThat(plan.numberOf("a")).contains(1);
        assertThat(plan.numberOf("b")).contains(2);
        assertThat(plan.numberOf("lamp")).isEmpty();
    }

    @Test
    void theLongestPulseFitsThePeriod() {
        // Derived: at 400 Hz the period is 2.5 ms, which leaves 0.5 ms after a pulse of 2 ms; at 500 Hz nothing is
        // left.
        Device device = servo("a", null, 1000, 400);

        assertThat(device.pulseFits(400)).isTrue();
        assertThat(1e6 / 400 - device.longestPulseUs()).isEqualTo(500);
        assertThat(device.pulseFits(500)).isFalse();
        assertThat(new Device("b", null, PulseKind.DATA, null, null, 2000).pulseFits(5000))
                .isTrue();
    }

    @Test
    void whatIsConnectedStaysAndTheRestTakesTheLowestFreeNumbers() {
        BankPlan plan = BankPlanner.plan(
                List.of(bank("A", 1, 4, 50), bank("B", 5, 4, 50)),
                List.of(servo("new", null, 60, 50), servo("kept", 6, 60, 50), servo("other", 1, 60, 50)));

        assertThat(plan.numberOf("kept")).contains(6);
        assertThat(plan.numberOf("other")).contains(1);
        assertThat(plan.numberOf("new")).contains(2);
        assertThat(plan.moved()).isZero();
    }

    @Test
    void ofTwoOnOneOutputTheFirstOneKeepsIt() {
        BankPlan plan = BankPlanner.plan(
                List.of(bank("A", 1, 4, 50)), List.of(servo("first", 3, 60, 50), servo("second", 3, 60, 50)));

        assertThat(plan.numberOf("first")).contains(3);
        assertThat(plan.numberOf("second")).contains(1);
    }

    @Test
    void fewestBanksAreUsed() {
        List<Device> devices = IntStream.range(0, 6)
                .mapToObj(i -> servo("s" + i, null, 60, 50))
                .toList();

        BankPlan plan = BankPlanner.plan(
                List.of(bank("A", 1, 2, 50), bank("B", 3, 4, 50), bank("C", 7, 2, 50), bank("D", 9, 6, 50)), devices);

        assertThat(plan.settings()).extracting(setting -> setting.bank().name()).containsExactly("D");
    }

    @ParameterizedTest
    @ValueSource(
            longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26})
    void noPlanIsBetter(long seed) {
        for (int round = 0; round < 12; round++) {
            Random random = new Random(seed * 100 + round);
            List<OutputBank> banks = banks(random);
            List<Device> devices = devices(random, banks);

            BankPlan plan = BankPlanner.plan(banks, devices);

            assertValid(plan, devices);
            assertThat(score(plan))
                    .as("banks %s devices %s", banks, devices)
                    .isEqualTo(new Exhaustive(banks, devices).best());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anotherBankNeverMakesItWorse(long seed) {
        Random random = new Random(seed);
        List<OutputBank> banks = banks(random);
        List<Device> devices = devices(random, banks);
        List<OutputBank> more = new ArrayList<>(banks);
        more.add(bank("More", 90, 3, 50, 333));

        BankPlan plan = BankPlanner.plan(banks, devices);
        BankPlan better = BankPlanner.plan(more, devices);

        assertThat(better.leftOver()).hasSizeLessThanOrEqualTo(plan.leftOver().size());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theOrderOfTheDevicesDoesNotMatter(long seed) {
        Random random = new Random(seed);
        List<OutputBank> banks = banks(random);
        List<Device> devices = devices(random, banks);
        List<Device> shuffled = new ArrayList<>(devices);
        Collections.shuffle(shuffled, random);

        assertThat(score(BankPlanner.plan(banks, shuffled))).isEqualTo(score(BankPlanner.plan(banks, devices)));
    }

    @Test
    void aFullBoardIsPlanned() {
        List<OutputBank> banks = IntStream.range(0, 8)
                .mapToObj(i -> bank("B" + i, 1 + 4 * i, 4, 50, 100, 200, 333))
                .toList();
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < 32; i++) {
            devices.add(
                    i % 4 == 3 ? lamp("l" + i) : servo("s" + i, null, i % 3 == 0 ? 60 : 333, i % 3 == 0 ? 50 : 200));
        }

        BankPlan plan = BankPlanner.plan(banks, devices);

        assertThat(plan.isComplete()).isTrue();
        assertThat(plan.belowWish()).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void aFullBoardOfManyRatesAndKindsIsPlannedInAnyOrder(long seed) {
        Random random = new Random(seed);
        double[] rates = {50, 60, 100, 125, 200, 333, 400};
        List<OutputBank> banks = IntStream.range(0, 8)
                .mapToObj(i -> bank("B" + i, 1 + 4 * i, 4, rates))
                .toList();
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < 32; i++) {
            double max = rates[random.nextInt(rates.length)];
            double wanted = Math.min(max, rates[random.nextInt(rates.length)]);
            PulseKind kind = random.nextInt(4) == 0 ? PulseKind.ON_OFF : PulseKind.SERVO_PULSE;
            devices.add(new Device("d" + i, null, kind, max, wanted, 2000));
        }
        List<Device> shuffled = new ArrayList<>(devices);
        Collections.shuffle(shuffled, random);

        BankPlan plan = BankPlanner.plan(banks, devices);

        assertValid(plan, devices);
        assertThat(score(BankPlanner.plan(banks, shuffled))).isEqualTo(score(plan));
    }

    /** Sixteen banks of four with rates, kinds and wishes at random. */
    private static List<OutputBank> hostileBanks(Random random) {
        return IntStream.range(0, 16)
                .mapToObj(i -> new OutputBank(
                        "B" + i,
                        IntStream.range(4 * i + 1, 4 * i + 5).boxed().toList(),
                        IntStream.range(0, 4)
                                .mapToObj(any -> 50.0 * (1 + random.nextInt(10)))
                                .toList(),
                        List.of(PulseKind.SERVO_PULSE, KINDS.get(random.nextInt(KINDS.size())))))
                .toList();
    }

    private static List<Device> hostileDevices(Random random) {
        return IntStream.range(0, 64)
                .mapToObj(i -> {
                    double max = 50.0 * (1 + random.nextInt(10));
                    double wanted = Math.min(max, 50.0 * (1 + random.nextInt(10)));
                    return new Device("d" + i, null, KINDS.get(random.nextInt(KINDS.size())), max, wanted, 1500);
                })
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whereThereAreTooManyWaysTheBestOneTriedStandsAndNoMoreIsSaidThanIsKnown(long seed) {
        Random random = new Random(seed);
        List<OutputBank> banks = hostileBanks(random);
        List<Device> devices = hostileDevices(random);

        BankPlan plan = BankPlanner.plan(banks, devices);

        assertValid(plan, devices);
        assertThat(plan.placings()).hasSizeGreaterThan(32);
        assertThat(plan.leftAtLeast()).isLessThanOrEqualTo(plan.leftOver().size());
        assertThat(plan.isDecided())
                .isEqualTo(plan.leftAtLeast() == plan.leftOver().size());
        assertThat(BankPlanner.plan(banks, devices)).isEqualTo(plan);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatIsRecordedIsNeverMadeWorse(long seed) {
        Random random = new Random(seed);
        List<OutputBank> banks = hostileBanks(random);
        List<Device> devices = hostileDevices(random);
        BankPlan found = BankPlanner.plan(banks, devices);
        List<Device> recorded = devices.stream()
                .map(device -> device.withNumber(found.numberOf(device.code()).orElse(null)))
                .toList();

        BankPlan plan = BankPlanner.plan(banks, recorded);

        assertThat(plan.leftOver()).hasSizeLessThanOrEqualTo(found.leftOver().size());
    }

    private static List<Integer> score(BankPlan plan) {
        return List.of(
                plan.leftOver().size(),
                plan.belowWish(),
                plan.moved(),
                plan.settings().size());
    }

    private static void assertValid(BankPlan plan, List<Device> devices) {
        assertThat(plan.placings()).extracting(BankPlan.Placing::number).doesNotHaveDuplicates();
        for (BankPlan.Placing placing : plan.placings()) {
            Device device = devices.stream()
                    .filter(each -> each.code().equals(placing.device()))
                    .findFirst()
                    .orElseThrow();
            assertThat(plan.settings())
                    .filteredOn(setting -> setting.bank().outputNumbers().contains(placing.number()))
                    .singleElement()
                    .matches(setting -> setting.serves(device));
        }
    }

    private static List<OutputBank> banks(Random random) {
        List<OutputBank> banks = new ArrayList<>();
        int next = 1;
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            int count = 1 + random.nextInt(3);
            banks.add(random.nextInt(3) == 0 ? bank("B" + i, next, count, 50) : bank("B" + i, next, count, 50, 200));
            next += count;
        }
        return banks;
    }

    private static List<Device> devices(Random random, List<OutputBank> banks) {
        int last = banks.stream().mapToInt(bank -> bank.outputNumbers().size()).sum();
        List<Integer> numbers =
                new ArrayList<>(IntStream.rangeClosed(1, last).boxed().toList());
        Collections.shuffle(numbers, random);
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            Integer number = random.nextInt(3) == 0 && !numbers.isEmpty() ? numbers.remove(0) : null;
            boolean fast = random.nextBoolean();
            devices.add(new Device(
                    "d" + i,
                    number,
                    random.nextInt(3) == 0 ? PulseKind.ON_OFF : PulseKind.SERVO_PULSE,
                    fast ? 333.0 : 60.0,
                    fast ? (Double) (random.nextBoolean() ? 200.0 : 50.0) : null,
                    2000));
        }
        return devices;
    }

    /** Tries every setting of every bank and every place of every device. */
    private record Exhaustive(List<OutputBank> banks, List<Device> devices) {

        List<Integer> best() {
            List<List<Integer>> scores = new ArrayList<>();
            settings(0, new ArrayList<>(), scores);
            return scores.stream().min(Exhaustive::compare).orElseThrow();
        }

        private void settings(int bank, List<@Nullable BankSetting> chosen, List<List<Integer>> scores) {
            if (bank == banks.size()) {
                scores.add(places(chosen, 0, new int[chosen.size()], 0, 0, 0));
                return;
            }
            List<@Nullable BankSetting> all = new ArrayList<>(BankSetting.of(banks.get(bank)));
            all.add(null);
            for (BankSetting setting : all) {
                chosen.add(setting);
                settings(bank + 1, chosen, scores);
                chosen.remove(chosen.size() - 1);
            }
        }

        private List<Integer> places(
                List<@Nullable BankSetting> chosen, int device, int[] used, int left, int slow, int moved) {
            if (device == devices.size()) {
                int banksUsed =
                        (int) Arrays.stream(used).filter(each -> each > 0).count();
                return List.of(left, slow, moved, banksUsed);
            }
            Device here = devices.get(device);
            List<Integer> best = places(chosen, device + 1, used, left + 1, slow, moved);
            for (int bank = 0; bank < chosen.size(); bank++) {
                BankSetting setting = chosen.get(bank);
                if (setting == null
                        || used[bank] == setting.bank().outputNumbers().size()
                        || !setting.serves(here)) {
                    continue;
                }
                used[bank]++;
                boolean away =
                        here.number() != null && !setting.bank().outputNumbers().contains(here.number());
                List<Integer> score = places(
                        chosen,
                        device + 1,
                        used,
                        left,
                        slow + (setting.isSlowFor(here) ? 1 : 0),
                        moved + (away ? 1 : 0));
                used[bank]--;
                best = compare(score, best) < 0 ? score : best;
            }
            return best;
        }

        private static int compare(List<Integer> one, List<Integer> other) {
            for (int i = 0; i < one.size(); i++) {
                int order = Integer.compare(one.get(i), other.get(i));
                if (order != 0) {
                    return order;
                }
            }
            return 0;
        }
    }
}
