package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.LinePlace.Size;

/**
 * Moments and products of inertia in kg m^2, along the axes of the record: x aft, y to the right, z up. Products are positive
 * integrals, Ixz = + integral of x z dm, not elements of the tensor (SFTE Reference Handbook, 2013, chapter 7).
 */
public record InertiaTensor(double ixx, double iyy, double izz, double ixy, double ixz, double iyz) {

    public static final InertiaTensor ZERO = new InertiaTensor(0, 0, 0, 0, 0, 0);

    public static final String CONVENTION =
            "Axes of the record through the CG: x aft, y to the right, z up. Products are positive integrals, Ixz = +∫xz dm."
                    + " In body axes (x forward, y to the right, z down) Ixz is the same, Ixy and Iyz change their sign.";

    private static final double MM2_PER_M2 = 1e6;

    /** A cuboid about its own centre: Ix = m (w^2 + h^2) / 12 and so on, edges along the axes. */
    static InertiaTensor ofCuboid(double massKg, Size size) {
        double x = massKg * square(size.length().mm()) / 12 / MM2_PER_M2;
        double y = massKg * square(size.width().mm()) / 12 / MM2_PER_M2;
        double z = massKg * square(size.height().mm()) / 12 / MM2_PER_M2;
        return new InertiaTensor(y + z, x + z, x + y, 0, 0, 0);
    }

    /** A point mass at millimetres from the point the moments are about. */
    static InertiaTensor ofPoint(double massKg, double xMm, double yMm, double zMm) {
        double kgPerM2 = massKg / MM2_PER_M2;
        return new InertiaTensor(
                kgPerM2 * (yMm * yMm + zMm * zMm),
                kgPerM2 * (xMm * xMm + zMm * zMm),
                kgPerM2 * (xMm * xMm + yMm * yMm),
                kgPerM2 * xMm * yMm,
                kgPerM2 * xMm * zMm,
                kgPerM2 * yMm * zMm);
    }

    public InertiaTensor plus(InertiaTensor other) {
        return new InertiaTensor(
                ixx + other.ixx, iyy + other.iyy, izz + other.izz, ixy + other.ixy, ixz + other.ixz, iyz + other.iyz);
    }

    /** About a point that lies this far from the CG, by the parallel-axis theorem; given about the CG. */
    public InertiaTensor about(double massKg, double xMm, double yMm, double zMm) {
        return plus(ofPoint(massKg, xMm, yMm, zMm));
    }

    /** In the axes of flight mechanics, x forward, y to the right, z down: flipping two axes leaves Ixz as it is. */
    public InertiaTensor inBodyAxes() {
        return new InertiaTensor(ixx, iyy, izz, -ixy, ixz, -iyz);
    }

    /** The tensor itself, products with a minus sign. */
    public double[][] matrix() {
        return new double[][] {{ixx, -ixy, -ixz}, {-ixy, iyy, -iyz}, {-ixz, -iyz, izz}};
    }

    /** Whether any body has such moments: none may exceed the sum of the other two. */
    public boolean isPossible() {
        double slack = 1e-9 * (ixx + iyy + izz); // rounding of a flat body, for which two moments sum to the third
        return alongX() >= -slack && alongY() >= -slack && alongZ() >= -slack;
    }

    /**
     * Whether an aeroplane has such moments: it is spread wider in length and in span than in height, so that yaw inertia is the
     * greatest of the three. Ledgerwing's own rule; from no publication.
     */
    public boolean isFlat() {
        return izz >= ixx && izz >= iyy;
    }

    /** Root mean square distance from the CG along z, in millimetres: integral of z^2 dm = (Ix + Iy - Iz) / 2. */
    public double rmsHeightMm(double massKg) {
        return rmsMm(alongZ(), massKg);
    }

    public double rmsLengthMm(double massKg) {
        return rmsMm(alongX(), massKg);
    }

    public double rmsWidthMm(double massKg) {
        return rmsMm(alongY(), massKg);
    }

    private double alongX() {
        return (iyy + izz - ixx) / 2;
    }

    private double alongY() {
        return (ixx + izz - iyy) / 2;
    }

    private double alongZ() {
        return (ixx + iyy - izz) / 2;
    }

    private static double rmsMm(double kgM2, double massKg) {
        return Math.sqrt(Math.max(0, kgM2) / massKg * MM2_PER_M2);
    }

    private static double square(double value) {
        return value * value;
    }
}
