package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Station;

/**
 * A point at which mass is counted: a support with what it carries, or an extra item with its mass taken off.
 *
 * @param netG net reading of the first weighing in grams, negative for an extra item
 * @param tiltedG the same in the second weighing; the first one again where there was none
 * @param readingG u of each of the two readings by itself
 * @param sharedG u of what enters both alike: the tare, or the mass of the extra item
 * @param pointMm u of each coordinate of the point
 */
record Footing(Station at, double netG, double tiltedG, double readingG, double sharedG, double pointMm) {

    double xMm() {
        return at.x().mm();
    }

    double yMm() {
        return at.y().mm();
    }

    double zMm() {
        return at.z().mm();
    }
}
