package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * A part as a box along the axes, or as a point while nobody knows its size; millimetres.
 *
 * @param sized whether its size is known; half lengths are 0 else
 */
record Box(double xMm, double yMm, double zMm, double halfXMm, double halfYMm, double halfZMm, boolean sized) {

    /** One box, or one on either side of a mirrored part. */
    static List<Box> of(LinePlace place, Station station) {
        Length side = place.mirroredAtY();
        return side == null
                ? List.of(of(station, station.y().mm(), place.size()))
                : List.of(of(station, side.mm(), place.size()), of(station, -side.mm(), place.size()));
    }

    private static Box of(Station station, double yMm, @Nullable Size size) {
        return new Box(
                station.x().mm(),
                yMm,
                station.z().mm(),
                size == null ? 0 : size.length().mm() / 2,
                size == null ? 0 : size.width().mm() / 2,
                size == null ? 0 : size.height().mm() / 2,
                size != null);
    }

    /** Between their nearest points where both have a size, else between their stations. */
    double distanceMm(Box other) {
        double apartX = Math.max(0, Math.abs(xMm - other.xMm) - reachX(other));
        return Math.hypot(apartX, asideMm(other));
    }

    /** Their distance seen along x: what moving one of them along x cannot take away. */
    double asideMm(Box other) {
        boolean boxes = sized && other.sized;
        double apartY = Math.abs(yMm - other.yMm) - (boxes ? halfYMm + other.halfYMm : 0);
        double apartZ = Math.abs(zMm - other.zMm) - (boxes ? halfZMm + other.halfZMm : 0);
        return Math.hypot(Math.max(0, apartY), Math.max(0, apartZ));
    }

    /** What their sizes take up between their stations along x. */
    double reachX(Box other) {
        return sized && other.sized ? halfXMm + other.halfXMm : 0;
    }

    /** How far it stays clear of the nearest wall; negative where it sticks out. */
    double clearInMm(Bay bay) {
        return DoubleStream.of(
                        clear(xMm, halfXMm, bay.fromX(), bay.toX()),
                        clear(yMm, halfYMm, bay.fromY(), bay.toY()),
                        clear(zMm, halfZMm, bay.fromZ(), bay.toZ()))
                .min()
                .orElseThrow();
    }

    /** As {@link #clearInMm} along x alone. */
    double clearAlongX(Bay bay) {
        return clear(xMm, halfXMm, bay.fromX(), bay.toX());
    }

    private static double clear(double at, double half, @Nullable Length from, @Nullable Length to) {
        return from == null || to == null
                ? Double.POSITIVE_INFINITY
                : Math.min(at - half - from.mm(), to.mm() - at - half);
    }
}
