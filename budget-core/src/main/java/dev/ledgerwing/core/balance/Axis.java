package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Station;

/** The axes of the record: x aft, y to the right, z up. */
enum Axis {
    X,
    Y,
    Z;

    double mm(Station station) {
        return switch (this) {
            case X -> station.x().mm();
            case Y -> station.y().mm();
            case Z -> station.z().mm();
        };
    }

    double mm(Cg cg) {
        return switch (this) {
            case X -> cg.xMm();
            case Y -> cg.yMm();
            case Z -> cg.zMm();
        };
    }

    double mm(CgUncertainty uncertainty) {
        return switch (this) {
            case X -> uncertainty.xMm();
            case Y -> uncertainty.yMm();
            case Z -> uncertainty.zMm();
        };
    }
}
