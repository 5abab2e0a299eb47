package dev.ledgerwing.core.power.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class DayFindingsTest {

    private static final SolarDay NIGHT = Days.starting(Days.DECEMBER, 20, 90);

    private static Finding finding(SolarDay day, double consumptionW, @Nullable Double wantedMinutes) {
        return DayFindings.of(Days.balance(day, consumptionW), wantedMinutes);
    }

    @Test
    void saysThatTheNightCanBeFlown() {
        Finding finding = finding(Days.starting(Days.JUNE, 20, 90), 15, null);

        assertThat(finding.code()).isEqualTo("power.day");
        assertThat(finding.budget()).isEqualTo(Budget.POWER);
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Said.sentence(finding))
                .startsWith("The flight can be kept up through the night: at the lowest, at 0")
                .contains("20 % must stay in them. After 24 h they are", "full, having begun with 90 %.");
        assertThat(finding.marginLeft()).isPositive();
    }

    @Test
    void tellsWhenThePacksRunEmptyWithoutAskingForMoreThanIsWanted() {
        Finding finding = finding(NIGHT, 50, 90.0);

        assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Said.sentence(finding))
                .isEqualTo("The flight cannot be kept up through the night: the packs hold less than the 20 % that must"
                        + " stay in them from 03:00 on and run empty at 05:00.");
        assertThat(finding.measured()).isZero();
        assertThat(finding.limit()).isCloseTo(20, within(1e-9));
    }

    @Test
    void breaksWhereTheFlightShallLastADay() {
        Finding finding = finding(NIGHT, 50, 1440.0);

        assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(Said.sentence(finding))
                .startsWith("The flight shall last 24 h, but the packs hold less than the 20 %")
                .endsWith("from 03:00 on and run empty at 05:00.");
    }

    /** 500 Wh at 90 %: 38 W through a short night leave less than 20 %, but something. */
    @Test
    void tellsTheLowestWhereThePacksRunLowButNotEmpty() {
        Finding finding = finding(Days.starting(Days.JUNE, 20, 90), 38, null);

        assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Said.sentence(finding))
                .contains("on and are ", " full at the lowest, at ")
                .doesNotContain("empty");
    }

    @Test
    void isTightWhereEveryDayOfALongFlightBeginsWithLess() {
        SolarDay day = Days.starting(Days.DECEMBER, 9, 100);

        assertThat(finding(day, 12, null).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding(day, 12, 1440.0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding(day, 12, 2880.0).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Said.sentence(finding(day, 12, 2880.0)))
                .endsWith("The flight shall last 48 h: each day begins with less.");
    }

    @Test
    void doesNotKnowWithoutWhatIsDrawn() {
        Finding finding = DayFindings.of(Days.balance(Days.JUNE, null), 1440.0);

        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(finding.measured()).isNull();
        assertThat(finding.sentence())
                .isEqualTo("Whether the packs last through the day and the night is not known. What is missing: what"
                        + " is drawn from the packs.");
    }

    @Test
    void doesNotKnowWithoutCells() {
        DayBalance balance = DayBalance.of(Days.JUNE, List.of(), Days.PACKS, 30.0);

        assertThat(DayFindings.of(balance, null).verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(DayFindings.of(balance, null).sentence()).endsWith("cells that charge a pack.");
    }

    private static DayBalance beside(@Nullable Double lowHour) {
        return Days.balance(Days.starting(Days.JUNE, 20, 90), 15.0)
                .beside(List.of(new UnchargedPack("Standby pack", lowHour)));
    }

    /** What the cells charge lasts; a pack that they do not charge and that nothing stands in for does not. */
    @Test
    void namesAPackThatTheSunDoesNotReach() {
        Finding finding = DayFindings.of(beside(26.5), null);

        assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(finding.sentence())
                .isEqualTo("The flight cannot be kept up through the night: “Standby pack” is charged by no cells and"
                        + " holds only what must stay in it from 02:30 on.");
        assertThat(DayFindings.of(beside(26.5), 1440.0).verdict()).isEqualTo(Verdict.BREAKS);
    }

    @Test
    void doesNotKnowWhereAnotherPackIsNotKnown() {
        Finding finding = DayFindings.of(beside(null), null);

        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(finding.sentence()).endsWith("how long “Standby pack” lasts.");
    }
}
