package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.WeighedAs;
import dev.ledgerwing.core.quantity.Mass;

/**
 * Standard uncertainty of one row in grams, by the rules a build is judged by. A guess, a calculation or a catalogue figure is made
 * once and multiplied, so its error is multiplied too; only pieces weighed each by itself err apart.
 */
public record RowUncertainty(MassUncertainty rules) {

    /**
     * Standard deviation between pieces that are called equal, in per cent of one: Ledgerwing's own choice, from no publication.
     */
    static final double SPREAD_PERCENT = 2;

    /** 0 for a row of unknown mass: it is in no sum, and the statement says so. */
    public double grams(MassRow row) {
        Mass unit = row.mass().unitMass();
        if (unit == null) {
            return 0;
        }
        return ofAll(row, ofOne(row, unit), unit);
    }

    /** What it would be with each piece weighed by itself. */
    double gramsOnceWeighed(MassRow row) {
        return Math.sqrt(row.quantity()) * weighing();
    }

    private double ofOne(MassRow row, Mass unit) {
        Mass own = row.mass().uncertainty();
        if (own != null) {
            return own.grams();
        }
        return switch (row.basis()) {
            case GUESSED -> unit.grams() * rules.guessedPercent() / 100;
            case CALCULATED -> unit.grams() * rules.calculatedPercent() / 100;
            case CATALOGUE -> unit.grams() * rules.cataloguePercent() / 100;
            case WEIGHED -> weighing();
        };
    }

    private double ofAll(MassRow row, double ofOne, Mass unit) {
        int pieces = row.quantity();
        return switch (row.basis()) {
            case GUESSED, CALCULATED, CATALOGUE -> pieces * ofOne;
            case WEIGHED ->
                switch (weighedAs(row)) {
                    case EACH -> Math.sqrt(pieces) * ofOne;
                    case ONE -> Math.hypot(pieces * ofOne, spread(pieces, unit));
                    case TOGETHER -> ofOne;
                };
        };
    }

    private static WeighedAs weighedAs(MassRow row) {
        WeighedAs said = row.mass().weighedAs();
        return said == null ? WeighedAs.EACH : said;
    }

    /**
     * What the pieces that were not weighed add: s sqrt(n (n - 1)), with s the standard deviation between pieces. The sum of n pieces
     * minus n times the one weighed has n - 1 deviations of the others and n - 1 times that of the one weighed.
     */
    private static double spread(int pieces, Mass unit) {
        return unit.grams() * SPREAD_PERCENT / 100 * Math.sqrt((double) pieces * (pieces - 1));
    }

    /** One weighing on the team's scales. */
    private double weighing() {
        return new ScaleError(rules.scaleStep(), rules.scaleMaxError()).ofWeighingG(rules.tareTaken());
    }
}
