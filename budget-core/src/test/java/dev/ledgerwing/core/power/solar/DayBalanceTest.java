package dev.ledgerwing.core.power.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarDay;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DayBalanceTest {

    @Test
    void goesFromTheStartThrough24Hours() {
        DayBalance balance = Days.balance(Days.JUNE, 30.0);

        assertThat(balance.points()).hasSize(24 * 12 + 1);
        assertThat(balance.points().get(0).hour()).isEqualTo(12);
        assertThat(balance.points().get(0).chargePercent()).isEqualTo(90);
        assertThat(balance.points().get(288).hour()).isCloseTo(36, within(1e-9));
        assertThat(balance.missing()).isEmpty();
    }

    /** Steps of one minute are as good as any: five minutes lose less than half a per cent of a day's energy, an hour not much more. */
    @ParameterizedTest
    @CsvSource({"5, 0.5", "10, 0.5", "15, 0.5", "60, 1.5"})
    void harvestsTheSameInStepsOfAnySize(int stepMinutes, double percent) {
        for (SolarDay day : List.of(Days.JUNE, Days.DECEMBER, Days.heading(Days.JUNE, 90))) {
            assertThat(harvestWh(day, stepMinutes)).isCloseTo(harvestWh(day, 1), withPercentage(percent));
        }
    }

    private static double harvestWh(SolarDay day, int stepMinutes) {
        DayInputs inputs = new DayInputs(List.of(Days.CELLS), Days.PACKS, 30.0);
        return Objects.requireNonNull(
                DayBalance.of(new DayCourse(day, stepMinutes), inputs).harvestWh());
    }

    /** By derivation: 500 Wh at 90 %, 10 h of darkness at 20 W from 20:00 to 06:00 in December take 40 % of it. */
    @Test
    void emptiesThePacksAtNight() {
        DayCharge charge = charge(Days.balance(Days.starting(Days.DECEMBER, 20, 90), 20.0));

        assertThat(charge.percent().get(120)).isCloseTo(50, within(1e-9));
    }

    @Test
    void neverFillsThePacksAboveFull() {
        DayBalance balance = Days.balance(Days.JUNE, 0.0);

        assertThat(charge(balance).percent()).allMatch(each -> each <= 100).contains(100.0);
        assertThat(charge(balance).lowestPercent()).isEqualTo(90);
        assertThat(charge(balance).isFlownThrough()).isTrue();
    }

    /** Once empty the flight is over: the next morning's sun does not bring it back. */
    @Test
    void leavesEmptyPacksEmpty() {
        DayCharge charge = charge(Days.balance(Days.DECEMBER, 40.0));

        assertThat(charge.isFlownThrough()).isFalse();
        assertThat(charge.lowestPercent()).isZero();
        assertThat(charge.endPercent()).isZero();
        assertThat(charge.belowHour()).isLessThan(Objects.requireNonNull(charge.emptyHour()));
    }

    /** By derivation: in darkness from 20:00, 500 Wh at 90 %, 50 W: 20 % are left after 7 h, nothing after 9 h. */
    @Test
    void saysWhenThePacksRunLow() {
        DayCharge charge = charge(Days.balance(Days.starting(Days.DECEMBER, 20, 90), 50.0));

        assertThat(charge.keepPercent()).isCloseTo(20, within(1e-9));
        assertThat(charge.belowHour()).isCloseTo(27, within(1e-6));
        assertThat(charge.emptyHour()).isCloseTo(29, within(1e-6));
        assertThat(charge.lowestHour()).isCloseTo(29, within(1e-6));
    }

    @Test
    void saysAtOnceWhenThePacksBeginTooLow() {
        DayCharge charge = charge(Days.balance(Days.starting(Days.JUNE, 12, 10), 5.0));

        assertThat(charge.isFlownThrough()).isFalse();
        assertThat(charge.belowHour()).isEqualTo(12);
    }

    /** Energy is kept where the packs get neither full nor empty. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 20, 25})
    void losesNothingOnTheWay(double consumptionW) {
        SolarDay day = Days.starting(Days.JUNE, 12, 50);
        DayBalance balance = DayBalance.of(day, List.of(Days.CELLS), new DayStore(4000.0, 80.0, null), consumptionW);

        double gainWh = Objects.requireNonNull(balance.harvestWh()) - Objects.requireNonNull(balance.consumptionWh());
        assertThat(charge(balance).endPercent()).isCloseTo(50 + gainWh / 40, within(1e-6));
        assertThat(balance.consumptionWh()).isCloseTo(24 * consumptionW, within(1e-9));
    }

    @Test
    void harvestsInProportionToTheShareThatArrives() {
        SolarDay day = Days.JUNE;
        PowerSource half = PowerSource.solar("half", "Half", null, Days.tracked(100.0, -0.35, 48.0));

        assertThat(DayBalance.of(day, List.of(half), Days.PACKS, 30.0).harvestWh())
                .isCloseTo(Objects.requireNonNull(Days.balance(day, 30.0).harvestWh()) / 2, within(1e-6));
    }

    @Test
    void addsTheCellsOfEverySource() {
        PowerSource more = PowerSource.solar("tail-cells", "Tail cells", null, Days.tracked(50.0, -0.35, 96.0));

        assertThat(DayBalance.of(Days.JUNE, List.of(Days.CELLS, more), Days.PACKS, 30.0)
                        .harvestWh())
                .isCloseTo(Objects.requireNonNull(Days.balance(Days.JUNE, 30.0).harvestWh()) * 1.5, within(1e-6));
    }

    @Test
    void holdsTiedCellsAtTheVoltageOfThePacks() {
        DayStore low = new DayStore(500.0, 80.0, 14.4);
        DayStore high = new DayStore(500.0, 80.0, 25.2);

        assertThat(DayBalance.of(Days.JUNE, List.of(Days.tied(5.4)), low, 30.0).harvestWh())
                .isGreaterThan(200);
        assertThat(DayBalance.of(Days.JUNE, List.of(Days.tied(5.4)), high, 30.0).harvestWh())
                .isZero();
    }

    @Test
    void namesEverythingThatIsMissing() {
        PowerSource bare = PowerSource.solar("bare", "Bare cells", null, Days.tracked(null, null, null));
        DayBalance balance = DayBalance.of(Days.JUNE, List.of(bare), new DayStore(null, null, null), null);

        assertThat(balance.charge()).isNull();
        assertThat(balance.harvestWh()).isNull();
        assertThat(balance.consumptionWh()).isNull();
        assertThat(balance.missing())
                .containsExactly(
                        "the power at the best point of “Bare cells”",
                        "the change of power with temperature of “Bare cells”",
                        "the efficiency of the tracker of “Bare cells”",
                        "the capacity of the packs",
                        "how much of the packs may be used",
                        "what is drawn from the packs");
    }

    @Test
    void missesTheVoltageOfThePacksOnlyForTiedCells() {
        DayStore store = new DayStore(500.0, 80.0, null);

        assertThat(DayBalance.of(Days.JUNE, List.of(Days.CELLS), store, 30.0).missing())
                .isEmpty();
        assertThat(DayBalance.of(Days.JUNE, List.of(Days.tied(null)), store, 30.0)
                        .missing())
                .containsExactly("the short-circuit current of “Wing cells”", "the voltage of the packs");
    }

    @Test
    void harvestsNothingKnownWithoutCells() {
        DayBalance balance = DayBalance.of(Days.JUNE, List.of(), Days.PACKS, 30.0);

        assertThat(balance.harvestWh()).isNull();
        assertThat(balance.missing()).containsExactly("cells that charge a pack");
    }

    @Test
    void takesAllPacksAsOne() {
        PowerSource first = Days.pack("first", 6, 3000.0, 80);
        PowerSource second = Days.pack("second", 6, 1000.0, 60);

        DayStore store = DayStore.of(List.of(first, Days.CELLS, second));

        assertThat(store.capacityWh()).isCloseTo(6 * 3.6 * (6 + 2), within(1e-9));
        assertThat(store.usablePercent()).isCloseTo((6 * 80 + 2 * 60) / 8.0, within(1e-9));
        assertThat(store.nominalV()).isCloseTo(21.6, within(1e-9));
    }

    @Test
    void knowsNoPackWhereOneIsNotKnown() {
        PowerSource first = Days.pack("first", 6, 3000.0, 80);
        PowerSource second = Days.pack("second", 4, null, 60);

        assertThat(DayStore.of(List.of(first, second))).isEqualTo(new DayStore(null, null, null));
        assertThat(DayStore.of(List.of(Days.CELLS))).isEqualTo(new DayStore(null, null, null));
    }

    @Test
    void readsHoursAsAClockDoes() {
        assertThat(ClockHour.text(26 + 10 / 60.0)).isEqualTo("02:10");
        assertThat(ClockHour.text(23.9999)).isEqualTo("00:00");
        assertThat(ClockHour.text(9)).isEqualTo("09:00");
    }

    private static DayCharge charge(DayBalance balance) {
        return Objects.requireNonNull(balance.charge());
    }
}
