package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Mass and first moments from the readings, jointly. The first weighing gives the mass and y, both together x and z. Every reading, tare,
 * coordinate of a support and extra item is a source of error of its own (JCGM 100:2008, eq. 10): c_i by the derivatives of
 * {@link PoseReading}. Angles are taken as exact.
 */
final class ScalesSolver {

    private final List<Footing> footings;
    private final PoseReading first;
    private final PoseReading tilted;
    private final Solution solution;
    private final boolean hasY;
    private final Coordinate ledgerZ;
    private final double xMm;
    private final double yMm;
    private final double zMm;

    /** @param ledgerZ height by the ledger, for the solution that needs it */
    ScalesSolver(List<Footing> footings, Poses poses, Solution solution, boolean hasY, Coordinate ledgerZ) {
        this.footings = footings;
        this.first = PoseReading.of(poses.first(), footings, Footing::netG);
        this.tilted = PoseReading.of(poses.tilted(), footings, Footing::tiltedG);
        this.solution = solution;
        this.hasY = hasY;
        this.ledgerZ = ledgerZ;
        xMm = solution.x(first.etaMm(), tilted.etaMm(), ledgerZ.mm());
        yMm = footings.stream().mapToDouble(each -> each.netG() * each.yMm()).sum() / first.massG();
        zMm = solution.z(first.etaMm(), tilted.etaMm());
    }

    /** The attitudes of both weighings; the same one twice where there was one only. */
    record Poses(Pose first, Pose tilted) {}

    JointMass solve() {
        Map<Axis, Double> moments = new EnumMap<>(Axis.class);
        if (solution.hasX()) {
            moments.put(Axis.X, first.massG() * xMm);
        }
        if (hasY) {
            moments.put(Axis.Y, first.massG() * yMm);
        }
        if (solution.hasZ()) {
            moments.put(Axis.Z, first.massG() * zMm);
        }
        List<JointError> errors = new ArrayList<>();
        footings.forEach(footing -> addErrors(footing, errors));
        errors.add(new JointError(0, first.massG() * solution.xOfLedgerZ() * ledgerZ.uncertaintyMm(), 0, 0));
        return new JointMass(first.massG(), moments, errors);
    }

    private void addErrors(Footing at, List<JointError> errors) {
        double y = (at.yMm() - yMm) / first.massG();
        errors.add(error(1, first.perGram(at), 0, y).times(at.readingG()));
        errors.add(error(0, 0, tilted.perGram(at), 0).times(at.readingG()));
        errors.add(error(1, first.perGram(at), tilted.perGram(at), y).times(at.sharedG()));
        errors.add(error(0, first.perX(at), tilted.perX(at), 0).times(at.pointMm()));
        errors.add(error(0, first.perZ(at), tilted.perZ(at), 0).times(at.pointMm()));
        errors.add(error(0, 0, 0, at.netG() / first.massG()).times(at.pointMm()));
    }

    /** From the derivatives of M, eta_1, eta_2 and y to those of M and of the moments S = M r: dS = M dr + r dM. */
    private JointError error(double massG, double eta1, double eta2, double y) {
        double m = first.massG();
        return new JointError(
                massG,
                m * solution.x(eta1, eta2, 0) + xMm * massG,
                m * y + yMm * massG,
                m * solution.z(eta1, eta2) + zMm * massG);
    }
}
