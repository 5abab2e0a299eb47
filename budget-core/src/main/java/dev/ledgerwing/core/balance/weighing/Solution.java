package dev.ledgerwing.core.balance.weighing;

/**
 * How x and z of the centre of mass follow from what the weighings say ({@link PoseReading}): x = x1 eta_1 + x2 eta_2 + xz z_ledger and
 * z = z1 eta_1 + z2 eta_2.
 *
 * @param hasX whether x can be told at all, and {@code hasZ} the same for z
 */
record Solution(boolean hasX, boolean hasZ, double x1, double x2, double xOfLedgerZ, double z1, double z2) {

    static final Solution NONE = new Solution(false, false, 0, 0, 0, 0, 0);
    static final Solution LEVEL = new Solution(true, false, 1, 0, 0, 0, 0);

    /** One weighing with the nose up: eta = x cos + z sin, with z taken from the ledger. */
    static Solution withHeightOf(Pose pose) {
        return new Solution(true, false, 1 / pose.cos(), 0, -pose.sin() / pose.cos(), 0, 0);
    }

    /** Two weighings: both equations eta_k = x cos theta_k + z sin theta_k, whose determinant is sin(theta_2 - theta_1). */
    static Solution of(Pose first, Pose tilted) {
        double det = first.cos() * tilted.sin() - first.sin() * tilted.cos();
        return new Solution(
                true, true, tilted.sin() / det, -first.sin() / det, 0, -tilted.cos() / det, first.cos() / det);
    }

    double x(double eta1, double eta2, double ledgerZ) {
        return x1 * eta1 + x2 * eta2 + xOfLedgerZ * ledgerZ;
    }

    double z(double eta1, double eta2) {
        return z1 * eta1 + z2 * eta2;
    }
}
