package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where a part sits.
 *
 * @param station its centre of mass; null = not known
 * @param stationUncertainty standard uncertainty of the station
 * @param stowedStation where it is when stowed
 * @param travel how far along x it may be moved
 * @param size its box, for its own inertia and for keep-apart rules
 * @param mirroredAtY half of an even quantity sits at +y, half at -y
 */
public record LinePlace(
        @Nullable Station station,
        @Nullable Length stationUncertainty,
        @Nullable Station stowedStation,
        @Nullable Travel travel,
        @Nullable Size size,
        @Nullable Length mirroredAtY)
        implements FieldGroup {

    public static final LinePlace UNKNOWN = new LinePlace(null, null, null, null, null, null);

    /** A range along x. */
    public record Travel(Length fromX, Length toX) {

        public Travel {
            Check.coordinate("fromXMm", fromX);
            Check.coordinate("toXMm", toX);
            Check.require(
                    fromX.compareTo(toX) <= 0, "travel must run from the front to the back: fromXMm is behind toXMm");
        }
    }

    /** A box along the axes. */
    public record Size(Length length, Length width, Length height) {

        public Size {
            Check.extent("lengthMm", length);
            Check.extent("widthMm", width);
            Check.extent("heightMm", height);
        }
    }

    public LinePlace {
        Check.extent("stationUncertaintyMm", stationUncertainty);
        Check.coordinate("mirroredAtYMm", mirroredAtY);
    }

    public static LinePlace at(Station station) {
        return new LinePlace(station, null, null, null, null, null);
    }
}
