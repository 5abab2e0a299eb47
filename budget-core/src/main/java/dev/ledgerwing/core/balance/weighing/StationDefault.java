package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.quantity.Length;

/** How far a station may be off that says nothing of it. */
final class StationDefault {

    /** Standard uncertainty of a station measured with a rule: Ledgerwing's own choice; from no publication. */
    static final Length UNCERTAINTY = Length.ofMm(3);

    private StationDefault() {}

    static double uncertaintyMm(Geometry geometry) {
        Length own = geometry.stationUncertainty();
        return (own == null ? UNCERTAINTY : own).mm();
    }
}
