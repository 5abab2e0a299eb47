package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What one load case weighs.
 *
 * @param rows the lines aboard in the ledger's order, then the extra items
 * @param booking what the scales said and no line explains, of the airframe and of every assembly that is aboard
 */
public record CaseMass(LoadCase loadCase, List<MassRow> rows, MassTotal total, Mass booking) {

    public CaseMass {
        rows = List.copyOf(rows);
    }

    static CaseMass of(Build build, LoadCase loadCase, List<MassRow> ledger) {
        Set<String> absent = new HashSet<>(loadCase.absent());
        List<MassRow> aboard = new ArrayList<>(ledger);
        aboard.removeIf(row -> absent.contains(row.line()));
        loadCase.extra()
                .forEach(item -> aboard.add(MassRow.of(item, build.judgedBy().growth())));
        Mass booked = BookingsAboard.of(build, loadCase).all().stream()
                .map(Booking::mass)
                .reduce(Mass.ZERO, Mass::plus);
        return new CaseMass(loadCase, aboard, MassTotal.of(aboard), booked);
    }

    public boolean isFlight() {
        return loadCase.purpose() == LoadCase.Purpose.FLIGHT;
    }

    public Mass basic() {
        return total.basic();
    }

    /** Basic mass, growth allowance and bookings. */
    public Mass predicted() {
        return total.predicted().plus(booking);
    }

    /** The rows whose mass is not known; they are in no sum. */
    public List<MassRow> unknown() {
        return rows.stream().filter(row -> !row.isKnown()).toList();
    }
}
