package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where the difference between scales and ledger would sit, were it one part.
 *
 * @param at along the axes that are known, x or y at least
 * @param withinAirframe whether the airframe reaches there, twice the uncertainty allowed for; else it is not one missing part
 */
public record ImpliedStation(Map<Axis, Coordinate> at, boolean withinAirframe) {

    public ImpliedStation {
        at = Collections.unmodifiableMap(new TreeMap<>(at));
    }

    /** Empty where the masses lie too close together for it to mean anything. */
    static Optional<ImpliedStation> of(Comparison comparison, Build build) {
        AirframeExtent extent = AirframeExtent.of(build);
        Map<Axis, Coordinate> at = new TreeMap<>();
        boolean within = true;
        for (Axis axis : new Axis[] {Axis.X, Axis.Y}) {
            Optional<Coordinate> found = comparison.impliedStation(axis);
            if (found.isPresent()) {
                Coordinate coordinate = found.get();
                at.put(axis, coordinate);
                within &= extent.along(axis)
                        .map(range -> range.reaches(coordinate.mm(), 2 * coordinate.uncertaintyMm()))
                        .orElse(true);
            }
        }
        return at.isEmpty() ? Optional.empty() : Optional.of(new ImpliedStation(at, within));
    }
}
