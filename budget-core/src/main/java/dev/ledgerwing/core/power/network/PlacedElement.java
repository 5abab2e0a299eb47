package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.wire.Wires;
import org.jspecify.annotations.Nullable;

/**
 * An element in its feed, as the solver sees it.
 *
 * @param inUse how many of those side by side are whole
 * @param highestInputV the highest voltage that ever reaches it
 */
record PlacedElement(ElementAt at, FeedElement element, int inUse, double ohm, double highestInputV) {

    private static final double MILLIOHM_PER_OHM = 1000;

    static PlacedElement of(ElementAt at, FeedElement element, double conductorC, double highestInputV) {
        return new PlacedElement(
                at, element, element.count(), ohm(element, conductorC) / element.count(), highestInputV);
    }

    /** Of one; what is not known counts as none. */
    private static double ohm(FeedElement element, double conductorC) {
        Double own = element.milliohm();
        WireRun wire = element.wire();
        if (own != null) {
            return own / MILLIOHM_PER_OHM;
        }
        return wire == null ? 0 : Wires.loopOhm(wire, conductorC);
    }

    /** The same with one of them gone. */
    PlacedElement withOneLess() {
        return new PlacedElement(at, element, inUse - 1, ohm * inUse / (inUse - 1), highestInputV);
    }

    double forwardV() {
        Double forwardV = element.forwardV();
        return forwardV == null ? 0 : forwardV;
    }

    @Nullable
    Conversion conversion() {
        Regulator regulator = element.regulator();
        return regulator == null ? null : Conversion.of(regulator, inUse, highestInputV);
    }

    double idleOutV(double inV) {
        Conversion conversion = conversion();
        return (conversion == null ? inV : conversion.outV(inV)) - forwardV();
    }
}
