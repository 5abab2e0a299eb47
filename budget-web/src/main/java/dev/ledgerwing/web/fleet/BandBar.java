package dev.ledgerwing.web.fleet;

import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.desk.CgFigure;
import org.jspecify.annotations.Nullable;

/**
 * The CG in its band, in units of a drawing {@value #WIDTH} wide. The band stands at the same place in every row, forward to the left,
 * so that rows compare by eye.
 *
 * @param hasBand whether there are limits
 * @param cg place of the CG, at the edge where it lies farther out; null = not known, or no limits
 */
record BandBar(boolean hasBand, @Nullable Double cg) {

    static final double WIDTH = 150;
    static final double BAND_AT = 50;
    static final double BAND_WIDTH = 50;
    private static final double EDGE = 5;

    /** A CG that is not known, since parts are not placed, has no mark. */
    static BandBar of(CgFigure figure, Verdict verdict) {
        Double x = figure.xMm();
        Double forward = figure.forwardMm();
        Double aft = figure.aftMm();
        if (forward == null || aft == null || aft <= forward) {
            return new BandBar(false, null);
        }
        return new BandBar(
                true, x == null || verdict == Verdict.UNKNOWN ? null : place((x - forward) / (aft - forward)));
    }

    private static double place(double share) {
        double exact = BAND_AT + BAND_WIDTH * share;
        return Math.round(10 * Math.max(EDGE, Math.min(WIDTH - EDGE, exact))) / 10.0;
    }
}
