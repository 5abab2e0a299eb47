package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a position of a pack is told at the bench: from the front of its bay to its front face, or to its middle while nobody knows how
 * long it is. Without a bay from where it sits at the front end of its travel.
 *
 * @param from what it is measured from, in words
 * @param to what of the pack it is measured to, in words
 * @param zeroX the station of the pack that reads 0
 */
public record StrapPosition(String from, String to, Length zeroX) {

    /** The first bay that holds it, else its travel; empty for a pack that has neither. */
    static Optional<StrapPosition> of(PartLine pack, @Nullable Bay bay) {
        Size size = pack.place().size();
        String to = size == null ? "the middle of the pack" : "the front face of the pack";
        if (bay != null) {
            long half = size == null ? 0 : size.length().um() / 2;
            return Optional.of(new StrapPosition(
                    "the front of “" + bay.name() + "”", to, bay.fromX().plus(new Length(half))));
        }
        Travel travel = pack.place().travel();
        return travel == null
                ? Optional.empty()
                : Optional.of(
                        new StrapPosition("the front end of its travel", "the same point of the pack", travel.fromX()));
    }

    /** A station of the pack as read with a ruler. */
    public Length read(double xMm) {
        return Length.ofMm(xMm).minus(zeroX);
    }

    /** {@code mm from the front of “Pack bay” to the front face of the pack}. */
    public String words(Figures figures) {
        return figures.lengthUnit() + " from " + from + " to " + to;
    }
}
