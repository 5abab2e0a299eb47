package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * Whether the heaviest flight case stays below, or at most at, the limit that somebody else sets. A part of unknown mass in any
 * flight case leaves that unknown: that case may be the heaviest.
 */
record CeilingRule(MassStatement statement, Figures figures) {

    static final String CODE = "mass.ceiling";

    Optional<Finding> finding() {
        MassBudget budget = statement.build().budget();
        Mass ceiling = budget.ceilingMass();
        CeilingIs meant = budget.ceilingIs();
        return ceiling == null || meant == null ? Optional.empty() : Optional.of(against(ceiling, meant));
    }

    private Finding against(Mass ceiling, CeilingIs meant) {
        CaseMass heaviest = statement.heaviestFlight();
        Mass left = ceiling.minus(heaviest.predicted());
        UncertaintyOfRows uncertainty = UncertaintyOfRows.of(statement, heaviest);
        Verdict verdict = verdict(left, meant, uncertainty);
        String sentence = "Heaviest in flight is “" + heaviest.loadCase().name() + "”, predicted "
                + figures.mass(heaviest.predicted()) + ": " + judgement(verdict, ceiling, left, meant);
        MassRemedies remedies = new MassRemedies(heaviest.rows(), uncertainty.weighNext(), figures);
        return new MassAgainst(CODE, "Mass ceiling", null, heaviest.predicted(), ceiling)
                .finding(
                        verdict,
                        sentence,
                        switch (verdict) {
                            case BREAKS -> remedies.toSave(excess(left, meant));
                            case TIGHT -> remedies.toNarrow();
                            case UNKNOWN, HOLDS -> List.of();
                        });
    }

    private Verdict verdict(Mass left, CeilingIs meant, UncertaintyOfRows uncertainty) {
        if (left.compareTo(leastLeft(meant)) < 0) {
            return Verdict.BREAKS;
        }
        if (statement.rows().isEmpty() || unknownInFlight() > 0) {
            return Verdict.UNKNOWN;
        }
        return left.grams() < 2 * uncertainty.grams() ? Verdict.TIGHT : Verdict.HOLDS;
    }

    /** Masses are whole milligrams: below the ceiling means by a milligram at least. */
    private static Mass leastLeft(CeilingIs meant) {
        return meant == CeilingIs.BELOW ? new Mass(1) : Mass.ZERO;
    }

    private static Mass excess(Mass left, CeilingIs meant) {
        return leastLeft(meant).minus(left);
    }

    private String judgement(Verdict verdict, Mass ceiling, Mass left, CeilingIs meant) {
        String limit = "the ceiling (" + meant.words() + " " + figures.mass(ceiling) + ")";
        return switch (verdict) {
            case BREAKS ->
                left.isNegative()
                        ? "breaks " + limit + " by " + figures.mass(Mass.ZERO.minus(left)) + "."
                        : "equal to the ceiling, which must not be reached (" + meant.words() + " "
                                + figures.mass(ceiling) + ").";
            case UNKNOWN -> figures.mass(left) + " left to " + limit + ", but not every mass is known.";
            case TIGHT -> figures.mass(left) + " left to " + limit + ", less than twice its standard uncertainty.";
            case HOLDS -> figures.mass(left) + " left to " + limit + ".";
        };
    }

    private int unknownInFlight() {
        return statement.cases().stream()
                .filter(CaseMass::isFlight)
                .mapToInt(each -> each.total().unknown())
                .sum();
    }
}
