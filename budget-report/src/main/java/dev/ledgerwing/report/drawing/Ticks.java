package dev.ledgerwing.report.drawing;

import java.util.List;
import java.util.stream.LongStream;

/**
 * The marks of a ruler: round steps that leave room for their figures.
 *
 * @param step between two marks, in the unit of the ruler
 */
record Ticks(double step, List<Double> marks) {

    private static final double[] ROUND = {1, 2, 5};

    /** Marks from {@code low} to {@code high}, at least {@code least} apart. */
    static Ticks between(double low, double high, double least) {
        double step = step(least);
        List<Double> marks = LongStream.rangeClosed(
                        (long) Math.ceil(low / step - 1e-9), (long) Math.floor(high / step + 1e-9))
                .mapToObj(count -> count * step)
                .toList();
        return new Ticks(step, marks);
    }

    private static double step(double least) {
        for (double decade = Math.pow(10, Math.floor(Math.log10(least))); ; decade *= 10) {
            for (double round : ROUND) {
                if (round * decade >= least * (1 - 1e-9)) {
                    return round * decade;
                }
            }
        }
    }

    /** Decimal places that tell the marks apart. */
    int decimals() {
        return step >= 1 ? 0 : (int) Math.ceil(-Math.log10(step) - 1e-9);
    }
}
