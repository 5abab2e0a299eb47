package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.quantity.Length;

/** How far a station may be off that says nothing of it. */
final class StationDefault {

    /** Standard uncertainty: Ledgerwing's own choice; from no publication. */
    static final Length UNCERTAINTY = Length.ofMm(2);

    private StationDefault() {}

    static double uncertaintyMm(Geometry geometry) {
        Length own = geometry.stationUncertainty();
        return (own == null ? UNCERTAINTY : own).mm();
    }
}
