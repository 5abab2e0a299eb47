package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.mass.MassErrors;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Standard uncertainty of a CG: du/dm_i = (x_i - x) / M and du/dx_i = m_i / M along each axis (JCGM 100:2008, equations 10 and 16).
 * Masses of equal category and basis are off together, as in the mass forecast; stations are not. The halves of a mirrored
 * line are taken to be off alike. What has no mass or no station is not in it.
 */
final class CgErrors {

    private final List<PlacedRow> placed;
    private final List<BookedMass> booked;
    private final MassState state;
    private final double massG;
    private final Cg cg;
    private final MassErrors masses;

    CgErrors(CaseBalance aboard, MassState state, Cg cg, MassUncertainty rules) {
        this.placed = aboard.rows().stream().filter(PlacedRow::isPlaced).toList();
        this.booked = state == MassState.PREDICTED ? aboard.booked() : List.of();
        this.state = state;
        this.massG = aboard.sum(state).mass().grams();
        this.cg = cg;
        this.masses = new MassErrors(placed.stream().map(PlacedRow::row).toList(), rules);
    }

    CgUncertainty all() {
        return new CgUncertainty(along(Axis.X), along(Axis.Y), along(Axis.Z));
    }

    double along(Axis axis) {
        double variance = masses.variance(row -> perGram(placed.get(row), axis))
                + squares(placed.size(), row -> ofStation(placed.get(row)))
                + squares(booked.size(), each -> ofBooking(booked.get(each), axis));
        return Math.sqrt(variance);
    }

    /** Mid of a row's pieces along the axis, against the CG. */
    private double perGram(PlacedRow row, Axis axis) {
        return ((row.leastMm(axis) + row.mostMm(axis)) / 2 - axis.mm(cg)) / massG;
    }

    private double ofStation(PlacedRow row) {
        Mass mass = row.mass(state);
        return mass == null
                ? 0
                : mass.grams() / massG * row.stationUncertainty().mm();
    }

    private double ofBooking(BookedMass booking, Axis axis) {
        return booking.sum().mass().grams() / massG * axis.mm(booking.arm());
    }

    /** From the smallest on, so that the order of the lines changes no digit. */
    private static double squares(int size, IntToDoubleFunction each) {
        return IntStream.range(0, size)
                .mapToDouble(each)
                .map(value -> value * value)
                .sorted()
                .sum();
    }
}
