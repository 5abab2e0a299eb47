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

    /** What one unit adds to a case: a in g mm, b in g. */
    record Effect(double momentGMm, double massG) {

        static final Effect NONE = new Effect(0, 0);
    }

    LinearWay {
        effects = List.copyOf(effects);
    }

    @Override
    public Ranges landing(List<Aim> aims) {
        Ranges landing = allowed;
        for (int i = 0; i < aims.size() && !landing.isEmpty(); i++) {
            landing = landing.and(landing(aims.get(i), effects.get(i)));
        }
        return landing;
    }

    private Ranges landing(Aim aim, Effect effect) {
        double massG = aim.point().massG();
        double forward = effect.momentGMm - effect.massG * aim.fromMm() - bandPerUnit * massG;
        double aft = effect.massG * aim.toMm() + bandPerUnit * massG - effect.momentGMm;
        return Ranges.notBelowZero(massG * aim.clearOfForwardMm(), forward)
                .and(Ranges.notBelowZero(massG * aim.clearOfAftMm(), aft));
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
