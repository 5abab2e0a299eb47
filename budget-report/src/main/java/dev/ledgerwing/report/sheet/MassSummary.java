package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.mass.CaseMass;
import dev.ledgerwing.core.mass.MarginOf;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.mass.MassTotal;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;

/** The mass budget of one build in words and figures. Where masses are missing, sums are "at least" and margins "at most". */
public final class MassSummary {

    private static final String NOT_SET = "not set";
    private static final String NOT_KNOWN = "not known";
    private static final double LEAST_PERCENT = 0.1;

    private final BuildReview review;
    private final MassStatement statement;
    private final MassForecast forecast;
    private final Figures units;

    public MassSummary(BuildReview review) {
        this.review = review;
        this.statement = review.mass();
        this.forecast = review.massForecast();
        this.units = review.units();
    }

    /** The verdict of the mass budget: {@code breaks by 122 g}. */
    public VerdictMark verdict() {
        Verdict verdict = review.verdict(Budget.MASS);
        String by = statement
                .margin()
                .filter(MassMargin::isBroken)
                .map(margin -> " by " + units.mass(margin.predicted().minus(margin.target())))
                .orElse("");
        return VerdictMark.saying(verdict, verdict.word() + (verdict == Verdict.BREAKS ? by : ""));
    }

    /** The summary, cell by cell. */
    public List<Fact> facts() {
        return List.of(predicted(), target(), margin(), reserve(), ceiling(), forecastBand());
    }

    /** The predicted mass, and what it is made of. */
    public Fact predicted() {
        String unknown = unknown(statement.total().unknown());
        return new Fact(
                "Predicted mass",
                atLeast(units.mass(statement.predicted())),
                unknown.isEmpty() ? "basic " + units.mass(statement.basic()) : unknown);
    }

    private static String unknown(int count) {
        return switch (count) {
            case 0 -> "";
            case 1 -> "1 mass not known, in no sum";
            default -> count + " masses not known, in no sum";
        };
    }

    public Fact target() {
        Mass target = statement.build().budget().targetMass();
        return target == null
                ? new Fact("Target", NOT_SET, "")
                : new Fact("Target", units.mass(target), "all up, design load case");
    }

    /** What is left to the target, and what that is a per cent of. */
    public Fact margin() {
        return statement
                .margin()
                .map(margin -> new Fact("Margin", atMost(margin.mass()), percentOfTarget(margin)))
                .orElse(new Fact("Margin", NOT_KNOWN, "no target is set"));
    }

    private static String percentOfTarget(MassMargin margin) {
        Double percent = margin.percent(MarginOf.TARGET);
        return percent == null ? "" : Figures.percent(percent) + " " + MarginOf.TARGET.words();
    }

    private Fact reserve() {
        String stage = "stage " + statement.build().airframe().stage().title();
        String percent = Figures.percent(statement.reservePercent()) + " " + MarginOf.TARGET.words() + ", " + stage;
        return statement
                .margin()
                .map(margin -> new Fact("Reserve wanted", units.mass(margin.reserve()), percent))
                .orElse(new Fact("Reserve wanted", NOT_KNOWN, percent));
    }

    private Fact ceiling() {
        MassBudget budget = statement.build().budget();
        Mass ceiling = budget.ceilingMass();
        CeilingIs meant = budget.ceilingIs();
        if (ceiling == null || meant == null) {
            return new Fact("Ceiling", NOT_SET, "no limit from outside");
        }
        CaseMass heaviest = statement.heaviestFlight();
        return new Fact(
                "Ceiling",
                meant.words() + " " + units.mass(ceiling),
                "heaviest in flight " + atLeast(heaviest.total(), units.mass(heaviest.predicted())));
    }

    private Fact forecastBand() {
        if (!forecast.isComplete()) {
            return new Fact("Forecast, 95 of 100", NOT_KNOWN, "while a mass is missing");
        }
        Double within = forecast.probabilityWithinTarget();
        return new Fact(
                "Forecast, 95 of 100",
                units.roughMass(forecast.band95().low()) + " to "
                        + units.roughMass(forecast.band95().high()),
                within == null ? "no target is set" : "within the target: " + chance(within));
    }

    /** No forecast is certain, whatever it rounds to. */
    private static String chance(double probability) {
        double percent = 100 * probability;
        if (percent < LEAST_PERCENT) {
            return "below " + Figures.percent(LEAST_PERCENT);
        }
        return percent > 100 - LEAST_PERCENT
                ? "above " + Figures.percent(100 - LEAST_PERCENT)
                : Figures.percent(percent);
    }

    List<Fact> totals() {
        List<Fact> totals = new ArrayList<>();
        Double weighed = statement.total().weighedPercent();
        totals.add(new Fact(
                "Basic mass",
                atLeast(units.smallMass(statement.basic())),
                weighed == null ? "" : Figures.percent(weighed) + " of it weighed"));
        totals.add(new Fact("Growth allowance", units.smallMass(statement.growth()), "by the table of the record"));
        if (statement.booking().mg() != 0) {
            totals.add(new Fact(
                    "Booked from the scales", units.smallMass(statement.booking()), "not explained by any line yet"));
        }
        totals.add(new Fact(
                "Predicted mass",
                atLeast(units.smallMass(statement.predicted())),
                unknown(statement.total().unknown())));
        return totals;
    }

    private String atLeast(String mass) {
        return atLeast(statement.total(), mass);
    }

    static String atLeast(MassTotal total, String mass) {
        return (total.isComplete() ? "" : "at least ") + mass;
    }

    private String atMost(Mass mass) {
        return (statement.total().isComplete() ? "" : "at most ") + units.mass(mass);
    }
}
