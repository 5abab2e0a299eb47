package dev.ledgerwing.core.build;

/** The static margin wanted, in per cent of the mean aerodynamic chord: the CG this far ahead of the neutral point. */
public record StaticMargin(double leastPercent, double mostPercent) {

    public StaticMargin {
        Check.within("leastPercent", leastPercent, 0, 200, " %");
        Check.within("mostPercent", mostPercent, 0, 200, " %");
        Check.require(
                leastPercent < mostPercent,
                "the least static margin must be below the most, was " + leastPercent + " % and " + mostPercent + " %");
    }
}
