package dev.ledgerwing.core.balance.weighing;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What one weighing says of the centre of mass. The supports push straight up, so with F_i at r_i and the weight at r the moments vanish:
 * sum F_i (r_i - r) x g = 0. Level across, that leaves two equations: eta = sum n_i h_i / M, how far aft the centre lies measured level
 * ({@link Pose}), and y = sum n_i y_i / M, with n_i the net readings and M their sum.
 */
record PoseReading(Pose pose, double massG, double etaMm, ToDoubleFunction<Footing> net) {

    static PoseReading of(Pose pose, List<Footing> footings, ToDoubleFunction<Footing> net) {
        double massG = footings.stream().mapToDouble(net).sum();
        double momentGMm = footings.stream()
                .mapToDouble(each -> net.applyAsDouble(each) * pose.aftMm(each.xMm(), each.zMm()))
                .sum();
        return new PoseReading(pose, massG, momentGMm / massG, net);
    }

    /** d eta / d n_i, in millimetres per gram. */
    double perGram(Footing footing) {
        return (pose.aftMm(footing.xMm(), footing.zMm()) - etaMm) / massG;
    }

    /** d eta / d x_i. */
    double perX(Footing footing) {
        return net.applyAsDouble(footing) / massG * pose.cos();
    }

    /** d eta / d z_i. */
    double perZ(Footing footing) {
        return net.applyAsDouble(footing) / massG * pose.sin();
    }
}
