package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What a builder is told of a difference between scales and ledger. By derivation from JCGM 100:2008, eq. 10. */
class WeighInReportTest {

    /** 2000 g with its CG at 402 mm, from 300 mm to 900 mm; nothing of it is in doubt but where it is measured. */
    private static final Build LEDGER = Ledgers.with(
            Weighings.certain("nose", 1000, 300, 0, 0),
            Weighings.certain("pod", 990, 500, 0, 0),
            Weighings.certain("tail", 10, 900, 0, 0));

    private static final double MOMENT = 1000 * 300 + 990 * 500 + 10 * 900;

    /** What scales that show 1 g, at 200 mm twice and at 800 mm, say of the ledger and of one part more. */
    private static WeighInDraft withOnePartMore(double grams, double xMm) {
        double mass = 2000 + grams;
        double rear = (MOMENT + grams * xMm - 200 * mass) / 600;
        String front = text((mass - rear) / 2);
        return Weighings.level(
                Weighings.support("Left", "200", "-100", front),
                Weighings.support("Right", "200", "100", front),
                Weighings.support("Rear", "800", "0", text(rear)));
    }

    private static String text(double grams) {
        return String.format(Locale.ROOT, "%.3f g", grams);
    }

    @Test
    void aMissingPartIsFoundWhereItSits() {
        WeighInReport report = Weighings.report(LEDGER, withOnePartMore(120, 700));

        ImpliedStation implied = report.implied().orElseThrow();
        Coordinate x = implied.at().get(Axis.X);
        assertThat(x).isNotNull();
        assertThat(x.mm()).isCloseTo(700, within(0.05));
        assertThat(x.uncertaintyMm())
                .as("at least that of the readings, 1 g / sqrt(12) each, at 500, 500 and 100 mm from it")
                .isGreaterThan(Math.sqrt((2 * 500 * 500 + 100 * 100) / 12.0) / 120 - 0.01);
        assertThat(implied.withinAirframe()).isTrue();
        assertThat(report.words().difference())
                .extracting(Said::plain)
                .anySatisfy(
                        said -> assertThat(said).startsWith("Were it one missing part, it would sit at x = 700 mm"));
    }

    @Test
    void aPlaceOutsideTheAirframeIsNotOnePart() {
        WeighInReport report = Weighings.report(LEDGER, withOnePartMore(120, 3000));

        assertThat(report.implied().orElseThrow().withinAirframe()).isFalse();
        assertThat(report.words().difference())
                .extracting(Said::plain)
                .anySatisfy(said -> assertThat(said).startsWith("It is not one missing part"));
    }

    @Test
    void aSmallDifferenceIsPlacedNowhere() {
        double fourTimes = 4 * Math.sqrt(3 / 12.0);
        double sixTimes = 6 * Math.sqrt(3 / 12.0);

        assertThat(Weighings.report(LEDGER, withOnePartMore(fourTimes, 700)).implied())
                .isEmpty();
        assertThat(Weighings.report(LEDGER, withOnePartMore(sixTimes, 700)).implied())
                .isPresent();
    }

    @Test
    void theAdviceFollowsTheDifference() {
        assertThat(advised(withOnePartMore(0.9, 402))).isFalse();
        assertThat(advised(withOnePartMore(1.1, 402))).isTrue();
        assertThat(advised(withOnePartMore(-1.1, 402))).as("of either sign").isTrue();
    }

    private static boolean advised(WeighInDraft draft) {
        return Weighings.report(LEDGER, draft).proposal().orElseThrow().advised();
    }

    @Test
    void whatStaysBookedIsTheBuildersChoice() {
        WeighInDraft draft = withOnePartMore(40, 402);
        Build booked = WeighInDeeds.recorded(LEDGER, draft, Weighings.REVISION, WeighInDeeds.Choice.AS_ADVISED);
        WeighInDraft again = Weighings.named("W2", withOnePartMore(0, 402));

        assertThat(booked.booking()).isNotNull();
        assertThat(booked.booking().mass().grams()).isCloseTo(40, within(0.002));
        assertThat(WeighInDeeds.recorded(booked, again, Weighings.REVISION, WeighInDeeds.Choice.AS_ADVISED)
                        .booking())
                .as("scales and lines agree now: nothing stays booked")
                .isNull();
        assertThat(WeighInDeeds.recorded(booked, again, Weighings.REVISION, WeighInDeeds.Choice.LEAVE)
                        .booking())
                .isEqualTo(booked.booking());
        assertThat(WeighInDeeds.recorded(
                                booked, Weighings.named("W2", draft), Weighings.REVISION, WeighInDeeds.Choice.CLEAR)
                        .booking())
                .isNull();
        assertThat(WeighInDeeds.recorded(
                                LEDGER, withOnePartMore(0.5, 402), Weighings.REVISION, WeighInDeeds.Choice.BOOK)
                        .booking())
                .as("however small")
                .isNotNull();
    }
}
