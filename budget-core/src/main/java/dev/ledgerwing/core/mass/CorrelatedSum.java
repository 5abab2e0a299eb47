package dev.ledgerwing.core.mass;

import java.util.Collection;

/**
 * Standard uncertainties that are added up, any two of them with the same correlation r (JCGM 100:2008, 5.2.2): u^2 = sum u_i^2 +
 * r sum u_i u_j over all i other than j = (1 - r) sum u_i^2 + r (sum u_i)^2. The second form needs two sums, not every pair.
 *
 * @param correlation r, from 0 to 1
 */
record CorrelatedSum(double correlation, double sum, double sumOfSquares) {

    static CorrelatedSum none(double correlation) {
        return new CorrelatedSum(correlation, 0, 0);
    }

    /** Adds from the smallest on, so that the order in which they come changes no digit. */
    static CorrelatedSum of(double correlation, Collection<Double> uncertainties) {
        CorrelatedSum total = none(correlation);
        for (double each : uncertainties.stream().sorted().toList()) {
            total = total.plus(each);
        }
        return total;
    }

    CorrelatedSum plus(double uncertainty) {
        return new CorrelatedSum(correlation, sum + uncertainty, sumOfSquares + uncertainty * uncertainty);
    }

    CorrelatedSum minus(double uncertainty) {
        return new CorrelatedSum(correlation, sum - uncertainty, sumOfSquares - uncertainty * uncertainty);
    }

    double variance() {
        return Math.max(0, (1 - correlation) * sumOfSquares + correlation * sum * sum);
    }
}
