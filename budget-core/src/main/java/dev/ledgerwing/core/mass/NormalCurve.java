package dev.ledgerwing.core.mass;

/**
 * The normal distribution. The error function comes from Abramowitz and Stegun, Handbook of Mathematical Functions (1964): below
 * 2 the series 7.1.6, from there on the continued fraction 7.1.14 of the complementary function. Relative error below 1e-12
 * in both tails down to the smallest numbers there are.
 */
final class NormalCurve {

    /** Half the width of the middle 95 per cent, in standard deviations: the 97.5 per cent point. */
    static final double HALF_WIDTH_95 = 1.959963984540054;

    private static final double SERIES_BELOW = 2;
    private static final int FRACTION_DEPTH = 100;
    /** From here on the complementary function is below the smallest number there is. */
    private static final double NOTHING_BEYOND = 27.3;

    private NormalCurve() {}

    /** Probability of a value of at most {@code deviations} standard deviations above the mean. */
    static double atMost(double deviations) {
        return complement(-deviations / Math.sqrt(2)) / 2;
    }

    /** erfc(x) = 1 - erf(x). */
    static double complement(double x) {
        if (x < 0) {
            return 2 - complement(-x);
        }
        if (x > NOTHING_BEYOND) {
            return 0;
        }
        return x < SERIES_BELOW ? 1 - series(x) : fraction(x);
    }

    /** erf(x) = 2/sqrt(pi) exp(-x^2) sum of 2^n x^(2n+1) / (1 3 5 ... (2n+1)); no term is negative, so nothing cancels. */
    private static double series(double x) {
        double term = x;
        double sum = x;
        for (int n = 1; term > sum * 1e-17; n++) {
            term *= 2 * x * x / (2 * n + 1);
            sum += term;
        }
        return 2 / Math.sqrt(Math.PI) * Math.exp(-x * x) * sum;
    }

    /** erfc(x) = exp(-x^2)/sqrt(pi) 1/(x + (1/2)/(x + (2/2)/(x + (3/2)/(x + ...)))), worked out from the inside. */
    private static double fraction(double x) {
        double inner = x;
        for (int n = FRACTION_DEPTH; n >= 1; n--) {
            inner = x + n / 2.0 / inner;
        }
        return Math.exp(-x * x) / Math.sqrt(Math.PI) / inner;
    }
}
