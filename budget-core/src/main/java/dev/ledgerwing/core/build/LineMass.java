package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the mass of one piece, as one statement: a mass is only as good as the basis it stands on.
 *
 * @param unitMass mass of one piece; null = not known (never 0)
 * @param weighedAs how several pieces were weighed; only with basis {@code WEIGHED}, null = each by itself
 * @param uncertainty standard uncertainty of one piece, overrides the rule; null = by the rule
 * @param growthPercent allowance for growth, overrides the table; null = by the table
 */
public record LineMass(
        @Nullable Mass unitMass,
        Basis basis,
        @Nullable WeighedAs weighedAs,
        @Nullable Mass uncertainty,
        @Nullable Double growthPercent) {

    public LineMass {
        Check.mass("unitMassG", unitMass);
        Check.require(
                weighedAs == null || basis == Basis.WEIGHED,
                "weighedAs goes with basis WEIGHED, the basis was " + basis);
        Check.mass("uncertaintyG", uncertainty);
        Check.within("growthPercent", growthPercent, 0, 500, " %");
    }

    public static LineMass of(Mass unitMass, Basis basis) {
        return new LineMass(unitMass, basis, null, null, null);
    }

    public static LineMass notKnown() {
        return new LineMass(null, Basis.GUESSED, null, null, null);
    }
}
