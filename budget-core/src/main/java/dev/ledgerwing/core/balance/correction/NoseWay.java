package dev.ledgerwing.core.balance.correction;

import java.util.List;
import java.util.function.IntFunction;

/**
 * Lengthening the nose by e. What moves with the nose, m_n, goes forward by e, and k e grams of structure are added from the joint x_j
 * forward, with their own centroid at x_j - e/2. The CG reaches x_t where
 *
 * <pre>
 * (k/2) e^2 + [m_n + k (x_t - x_j)] e - M (x - x_t) = 0, the positive root; by derivation:
 * (M x - m_n e + k e (x_j - e/2)) / (M + k e) = x_t.
 * </pre>
 *
 * @param noses m_n of each case, in grams, in the order of the aims
 * @param perMm k of each case, in grams per millimetre: with growth at predicted mass
 */
record NoseWay(List<Double> noses, List<Double> perMm, double jointXMm, IntFunction<CorrectionStep> steps)
        implements Way {

    /** More than this is another aeroplane; Ledgerwing's own choice, from no publication. */
    static final double LONGEST_MM = 500;

    NoseWay {
        noses = List.copyOf(noses);
        perMm = List.copyOf(perMm);
    }

    @Override
    public Ranges allowed() {
        return Ranges.between(1, LONGEST_MM);
    }

    @Override
    public Ranges landing(List<Aim> aims) {
        Ranges landing = allowed();
        for (int i = 0; i < aims.size(); i++) {
            Aim aim = aims.get(i);
            double least = extension(i, aim.point(), aim.toMm());
            double most = extension(i, aim.point(), aim.fromMm());
            landing = landing.and(Ranges.between(least, most));
        }
        return landing;
    }

    /**
     * The extension that brings a case to {@code targetXMm}; negative where it lies ahead of it already, infinite where no extension
     * reaches it.
     */
    double extension(int index, FlightPoint point, double targetXMm) {
        double k = perMm.get(index);
        double linear = noses.get(index) + k * (targetXMm - jointXMm);
        double constant = -point.massG() * (point.xMm() - targetXMm);
        if (constant > 0) {
            return linear > 0 ? -constant / linear : Double.NEGATIVE_INFINITY;
        }
        if (constant == 0 && linear >= 0) {
            return 0;
        }
        // the positive root of (k/2) e^2 + linear e + constant, in the form that loses no digits
        double root = Math.sqrt(linear * linear - 2 * k * constant);
        double below = linear + root;
        return below > 0 ? -2 * constant / below : Double.POSITIVE_INFINITY;
    }

    @Override
    public FlightPoint after(FlightPoint point, int index, double e) {
        double addedG = perMm.get(index) * e;
        return point.with(addedG, addedG * (jointXMm - e / 2) - noses.get(index) * e);
    }

    @Override
    public double bandMovesMm(double amount) {
        return 0;
    }

    @Override
    public CorrectionStep step(int amount) {
        return steps.apply(amount);
    }
}
