package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;

/**
 * How far a mass may be off, by basis, and how much lines of one category and basis are off together.
 *
 * @param guessedPercent standard uncertainty of a guessed mass in per cent of it; likewise the next two
 * @param scaleStep the step of the team's scales
 * @param scaleMaxError greatest error of the scales either way
 * @param tareTaken whether each weighing is the difference of two readings
 * @param guessedCorrelation correlation between any two guessed lines of one category, 0 to 1; likewise the next three
 * @param source where the numbers come from, in words
 */
public record MassUncertainty(
        double guessedPercent,
        double calculatedPercent,
        double cataloguePercent,
        Mass scaleStep,
        Mass scaleMaxError,
        boolean tareTaken,
        double guessedCorrelation,
        double calculatedCorrelation,
        double catalogueCorrelation,
        double weighedCorrelation,
        String source) {

    /** The project's own choice; from no publication. */
    public static final MassUncertainty OWN_CHOICE = new MassUncertainty(
            20,
            8,
            3,
            Mass.ofGrams(1),
            Mass.ofGrams(1),
            true,
            0.3,
            0.3,
            0.1,
            0,
            "Ledgerwing's own choice; from no publication");

    public MassUncertainty {
        Check.within("guessedPercent", guessedPercent, 0, 200, " %");
        Check.within("calculatedPercent", calculatedPercent, 0, 200, " %");
        Check.within("cataloguePercent", cataloguePercent, 0, 200, " %");
        Check.mass("scaleStepG", scaleStep);
        Check.mass("scaleMaxErrorG", scaleMaxError);
        Check.within("guessedCorrelation", guessedCorrelation, 0, 1, "");
        Check.within("calculatedCorrelation", calculatedCorrelation, 0, 1, "");
        Check.within("catalogueCorrelation", catalogueCorrelation, 0, 1, "");
        Check.within("weighedCorrelation", weighedCorrelation, 0, 1, "");
        Check.name("source", source);
    }

    public double correlation(Basis basis) {
        return switch (basis) {
            case GUESSED -> guessedCorrelation;
            case CALCULATED -> calculatedCorrelation;
            case CATALOGUE -> catalogueCorrelation;
            case WEIGHED -> weighedCorrelation;
        };
    }
}
