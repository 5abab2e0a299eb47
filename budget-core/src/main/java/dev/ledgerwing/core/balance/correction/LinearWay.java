package dev.ledgerwing.core.balance.correction;

import java.util.List;
import java.util.function.IntFunction;

/**
 * A way whose first moments and masses grow in proportion to its amount q: x(q) = (M x + a q)/(M + b q), held against a band that
 * moves by l q. The case lies in its aim from f to t where
 *
 * <pre>
 * M (x - f) + (a - b f - l M) q >= 0   and   M (t - x) + (b t + l M - a) q >= 0
 * </pre>
 *
 * (b or l is 0). By derivation; it comes down to the forms a builder knows: moving m by d, d = M (x_t - x)/m; ballast at x_b, B = M (x -
 * x_t)/(x_t - x_b) (FAA-H-8083-30, chapter 4, temporary ballast); shifting the wing by s under a fixed band at p,
 * s = (x - x_LEMAC - p c)/(1 - mu) with mu = a/M; under a band that follows the neutral point l = 1 - K/(1 + K), so
 * s = c (h - T)/(1 - mu - K/(1 + K)).
 *
 * @param effects what one unit does to each case, in the order of the aims
 * @param bandPerUnit l, how far the band moves aft with one unit
 */
record LinearWay(List<Effect> effects, double bandPerUnit, Ranges allowed, IntFunction<CorrectionStep> steps)
        implements Way {

    /** Takes up rounding in sums of doubles where a case is not moved at all. */
    private static final double ROUNDING_GMM = 1e-6;

    /** What one unit adds to a case: a in g mm, b in g. */
    record Effect(double momentGMm, double massG) {

        static final Effect NONE = new Effect(0, 0);
    }

    LinearWay {
        effects = List.copyOf(effects);
    }

    /** The most first moment that it can add or take in any case. */
    double reachGMm() {
        double farthest = allowed.isEmpty() ? 0 : Math.max(Math.abs(allowed.least()), Math.abs(allowed.greatest()));
        return effects.stream()
                        .mapToDouble(effect -> Math.abs(effect.momentGMm))
                        .max()
                        .orElse(0)
                * farthest;
    }

    @Override
    public Ranges landing(List<Aim> aims) {
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (int i = 0; i < aims.size(); i++) {
            Aim aim = aims.get(i);
            Effect effect = effects.get(i);
            double massG = aim.point().massG();
            double forward = effect.momentGMm - effect.massG * aim.fromMm() - bandPerUnit * massG;
            double aft = effect.massG * aim.toMm() + bandPerUnit * massG - effect.momentGMm;
            least = Math.max(
                    least,
                    Math.max(least(massG * aim.clearOfForwardMm(), forward), least(massG * aim.clearOfAftMm(), aft)));
            most = Math.min(
                    most,
                    Math.min(most(massG * aim.clearOfForwardMm(), forward), most(massG * aim.clearOfAftMm(), aft)));
        }
        return least == Double.POSITIVE_INFINITY ? Ranges.NOTHING : allowed.and(Ranges.between(least, most));
    }

    /** The least q with constant + perUnit q at or above 0; infinite where there is none. */
    private static double least(double constant, double perUnit) {
        if (perUnit == 0) {
            return constant >= -ROUNDING_GMM ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return perUnit > 0 ? -constant / perUnit : Double.NEGATIVE_INFINITY;
    }

    /** The greatest such q. */
    private static double most(double constant, double perUnit) {
        return perUnit < 0 ? -constant / perUnit : Double.POSITIVE_INFINITY;
    }

    @Override
    public FlightPoint after(FlightPoint point, int index, double amount) {
        Effect effect = effects.get(index);
        return point.with(effect.massG * amount, effect.momentGMm * amount);
    }

    @Override
    public double bandMovesMm(double amount) {
        return bandPerUnit * amount;
    }

    @Override
    public CorrectionStep step(int amount) {
        return steps.apply(amount);
    }
}
