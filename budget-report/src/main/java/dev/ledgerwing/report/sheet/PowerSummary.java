package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.power.charging.PackCharge;
import dev.ledgerwing.core.power.energy.Endurance;
import dev.ledgerwing.core.power.failure.FailureFindings;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.power.solar.DayCharge;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The power budget of one build in words and figures. What is not known says so. */
public final class PowerSummary {

    private static final String NOT_KNOWN = "not known";
    /** What the finding about all functions together is about. */
    private static final String FLIGHT = "Single failures";

    private static final double HOURS_FROM_MINUTES = 180;

    private final BuildReview review;
    private final PowerStatement power;

    public PowerSummary(BuildReview review) {
        this.review = review;
        this.power = review.power();
    }

    public VerdictMark verdict() {
        return VerdictMark.of(review.verdict(Budget.POWER));
    }

    /** The summary, cell by cell. */
    public List<Fact> facts() {
        return Stream.concat(
                        Stream.of(margin(), heaviest(), endurance(), failures(), charging()),
                        Stream.ofNullable(power.day()).map(PowerSummary::day))
                .toList();
    }

    /** What is left of the rating that is nearest to its end. */
    public Fact margin() {
        return power.worstMarginPercent()
                .map(margin -> new Fact("Least margin", Figures.percent(margin), "of a rating"))
                .orElse(new Fact("Least margin", NOT_KNOWN, "no load is held against a rating"));
    }

    private Fact heaviest() {
        return power.network()
                .heaviestRail()
                .map(rail -> new Fact(
                        "Heaviest load", Figures.percent(Objects.requireNonNull(rail.loadPercent())), element(rail)))
                .orElse(new Fact("Heaviest load", NOT_KNOWN, ""));
    }

    private static String element(RailState rail) {
        return rail.heaviest() == null
                ? "to " + rail.rail().name()
                : rail.heaviest().name();
    }

    /** How long the packs last. */
    public Fact endurance() {
        Endurance endurance = power.energy().endurance();
        Double minutes = endurance.minutes();
        Double wanted = power.build().power().rules().wantedMinutes();
        String note = wanted == null ? "" : time(wanted) + " wanted";
        if (minutes == null) {
            return new Fact("Endurance", NOT_KNOWN, note);
        }
        return endurance.holdsFixedPhases()
                ? new Fact("Endurance", time(minutes), note)
                : new Fact("Endurance", "too short", "the fixed phases do not fit in");
    }

    private Fact failures() {
        List<FailureRow> rows = power.failures().rows();
        long grave = rows.stream().filter(FailureRow::losesFlight).count();
        if (rows.isEmpty() || !isFlightKnown()) {
            return new Fact("Single failures", NOT_KNOWN, "whether one takes what the flight hangs on");
        }
        return new Fact("Single failures", grave + " of " + rows.size(), "lose something the flight hangs on");
    }

    /** Whether it is known which failures take what the flight hangs on: not before the parts say what they serve. */
    boolean isFlightKnown() {
        return review.finding(FailureFindings.SINGLE_FAILURE, FLIGHT)
                .filter(finding -> finding.verdict() != Verdict.UNKNOWN)
                .isPresent();
    }

    private Fact charging() {
        List<PackCharge> packs = power.charging().packs();
        if (packs.isEmpty()) {
            return new Fact("Charging aboard", "none", "no solar cells reach a pack");
        }
        Double worst = packs.stream()
                .map(PackCharge::worstA)
                .filter(Objects::nonNull)
                .max(Double::compare)
                .orElse(null);
        boolean allCutOff = packs.stream().allMatch(PackCharge::hasCutOff);
        return new Fact(
                "Charging aboard",
                worst == null ? NOT_KNOWN : PowerWords.amperes(worst) + " at most",
                allCutOff ? "cut off by itself" : "no automatic cut-off");
    }

    private static Fact day(DayBalance day) {
        DayCharge charge = day.charge();
        return charge == null
                ? new Fact("Day in the sun", NOT_KNOWN, "")
                : new Fact(
                        "Day in the sun",
                        charge.isFlownThrough() ? "flown through" : "not flown through",
                        "lowest charge " + Figures.percent(charge.lowestPercent()));
    }

    static String time(double minutes) {
        return minutes < HOURS_FROM_MINUTES
                ? Figures.number(minutes, 1) + "\u2009min"
                : Figures.number(minutes / 60, 1) + "\u2009h";
    }

    static String orNotKnown(@Nullable Double value, String unit) {
        return value == null ? NOT_KNOWN : Figures.number(value, value < 10 ? 2 : 1) + "\u2009" + unit;
    }
}
