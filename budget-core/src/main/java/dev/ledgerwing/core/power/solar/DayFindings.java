package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Whether the flight can be kept up through a day and its night. */
public final class DayFindings {

    public static final String DAY = "power.day";

    private static final double DAY_MINUTES = 24 * 60;
    /** Losing less than this from one day to the next counts as none. */
    private static final double SAME_PERCENT = 0.05;

    private final DayBalance balance;
    private final double wantedMinutes;

    private DayFindings(DayBalance balance, double wantedMinutes) {
        this.balance = balance;
        this.wantedMinutes = wantedMinutes;
    }

    /**
     * The one finding of a day.
     *
     * @param wantedMinutes how long the flight shall last; null = not said
     */
    public static Finding of(DayBalance balance, @Nullable Double wantedMinutes) {
        DayFindings rule = new DayFindings(balance, wantedMinutes == null ? 0 : wantedMinutes);
        DayCharge charge = balance.charge();
        return charge == null || !balance.missing().isEmpty() ? rule.unknown() : rule.known(charge);
    }

    private Finding unknown() {
        return finding(
                Verdict.UNKNOWN,
                null,
                "Whether the packs last through the day and the night is not known. What is missing: "
                        + String.join("; ", balance.missing()) + ".");
    }

    private Finding known(DayCharge charge) {
        return balance.isFlownThrough() ? flownThrough(charge) : runsLow(charge);
    }

    private Finding flownThrough(DayCharge charge) {
        double startPercent = balance.day().startPercent();
        boolean isLess = charge.endPercent() < startPercent - SAME_PERCENT;
        boolean isTooLittle = isLess && wantedMinutes > DAY_MINUTES;
        String sentence = "The flight can be kept up through the night: at the lowest, at "
                + ClockHour.text(charge.lowestHour()) + ", the packs are " + Figures.percent(charge.lowestPercent())
                + " full, " + Figures.percent(charge.keepPercent()) + " must stay in them. After 24 h they are "
                + Figures.percent(charge.endPercent()) + " full, having begun with "
                + Figures.percent(startPercent) + "."
                + (isTooLittle ? " The flight shall last " + wanted() + ": each day begins with less." : "");
        return finding(isTooLittle ? Verdict.TIGHT : Verdict.HOLDS, charge, sentence);
    }

    private Finding runsLow(DayCharge charge) {
        boolean isWanted = wantedMinutes >= DAY_MINUTES;
        String sentence = (isWanted
                        ? "The flight shall last " + wanted() + ", but "
                        : "The flight cannot be kept up through the night: ")
                + (charge.isFlownThrough() ? "" : "the packs " + low(charge) + ". ")
                + uncharged();
        return finding(isWanted ? Verdict.BREAKS : Verdict.TIGHT, charge, sentence);
    }

    private static String low(DayCharge charge) {
        Double belowHour = charge.belowHour();
        Double emptyHour = charge.emptyHour();
        String below = belowHour == null
                ? ""
                : "hold less than the " + Figures.percent(charge.keepPercent()) + " that must stay in them from "
                        + ClockHour.text(belowHour) + " on";
        String lowest = emptyHour == null
                ? " and are " + Figures.percent(charge.lowestPercent()) + " full at the lowest, at "
                        + ClockHour.text(charge.lowestHour())
                : " and run empty at " + ClockHour.text(emptyHour);
        return below + lowest;
    }

    private String uncharged() {
        return balance.uncharged().stream().map(DayFindings::uncharged).collect(Collectors.joining(" "));
    }

    private static String uncharged(UnchargedPack pack) {
        Double lowHour = pack.lowHour();
        String from = lowHour == null ? "" : " from " + ClockHour.text(lowHour) + " on";
        return "“" + pack.name() + "” is charged by no cells and holds only what must stay in it" + from + ".";
    }

    private String wanted() {
        return Figures.number(wantedMinutes / 60, 1) + " h";
    }

    private Finding finding(Verdict verdict, @Nullable DayCharge charge, String sentence) {
        Double lowest = charge == null ? null : charge.lowestPercent();
        Double keep = charge == null ? null : charge.keepPercent();
        Double left = charge == null ? null : charge.lowestPercent() - charge.keepPercent();
        return new Finding(
                DAY,
                Budget.POWER,
                verdict,
                "Day in the sun",
                null,
                lowest,
                keep,
                left,
                "%",
                sentence.strip(),
                List.of());
    }
}
