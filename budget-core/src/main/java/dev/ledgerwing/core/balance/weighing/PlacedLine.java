package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.mass.MassRow;
import dev.ledgerwing.core.mass.RowUncertainty;
import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A line with the station it had on the scales.
 *
 * @param station of its centre of mass, both sides of a mirrored part together; null = not known
 * @param massUncertaintyG u of its mass in grams
 * @param stationUncertaintyMm u of each coordinate in millimetres
 */
record PlacedLine(PartLine line, @Nullable Station station, double massUncertaintyG, double stationUncertaintyMm) {

    static PlacedLine of(PartLine line, Build build, LoadCase loadCase) {
        MassRow row = MassRow.of(line, build.judgedBy().growth());
        Length own = line.place().stationUncertainty();
        return new PlacedLine(
                line,
                station(line, loadCase),
                new RowUncertainty(build.judgedBy().massUncertainty()).grams(row),
                (own == null ? build.geometry().stationUncertaintyInForce() : own).mm());
    }

    private static @Nullable Station station(PartLine line, LoadCase loadCase) {
        LinePlace place = line.place();
        Station at = loadCase.moved().get(line.id());
        if (at == null) {
            at = loadCase.stowed().contains(line.id()) ? place.stowedStation() : place.station();
        }
        return at == null || place.mirroredAtY() == null ? at : new Station(at.x(), Length.ZERO, at.z());
    }

    /** Whether its moments are known: those of an unknown mass count as nothing, like the mass. */
    boolean hasMoments() {
        return station != null || !line.isMassKnown();
    }

    double gramsAt(Axis axis) {
        return station == null ? 0 : massUncertaintyG * axis.of(station).mm();
    }

    /** Its mass off by u: the moments go with it. */
    JointError ofMass() {
        return new JointError(massUncertaintyG, gramsAt(Axis.X), gramsAt(Axis.Y), gramsAt(Axis.Z));
    }

    /** Its place off by u along each axis: m u(x). */
    double placeGMm() {
        return line.totalMass().grams() * stationUncertaintyMm;
    }
}
