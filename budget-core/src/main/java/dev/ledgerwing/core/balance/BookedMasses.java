package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.mass.BookingsAboard;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.Moment;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** The bookings of a build, each at its moments or, without any, amid the rows it was weighed with. */
record BookedMasses(List<PlacedRow> rows) {

    List<BookedMass> of(BookingsAboard aboard) {
        List<BookedMass> all = new ArrayList<>();
        for (AssemblyBooking booked : aboard.assemblies()) {
            all.add(place(booked.assembly(), booked.booking()));
        }
        aboard.airframe().ifPresent(whole -> all.add(place(null, whole)));
        return List.copyOf(all);
    }

    private BookedMass place(@Nullable String assembly, Booking booking) {
        Moments moments = booking.moments();
        if (moments != null) {
            return new BookedMass(assembly, booking, new BalanceSum(booking.mass(), moments), CgUncertainty.NONE);
        }
        List<PlacedRow> amid = amid(assembly);
        BalanceSum rest = sum(amid);
        if (rest.mass().mg() <= 0) {
            return new BookedMass(assembly, booking, BalanceSum.ZERO, CgUncertainty.NONE); // nowhere to put it
        }
        return new BookedMass(
                assembly,
                booking,
                new BalanceSum(booking.mass(), atCentre(booking.mass(), rest)),
                new CgUncertainty(anywhereIn(amid, Axis.X), anywhereIn(amid, Axis.Y), anywhereIn(amid, Axis.Z)));
    }

    /** What was weighed with it; the whole where nothing of the assembly is placed. */
    private List<PlacedRow> amid(@Nullable String assembly) {
        List<PlacedRow> own = rows.stream()
                .filter(row -> row.isPlaced()
                        && (assembly == null || assembly.equals(row.row().assembly())))
                .toList();
        return sum(own).mass().mg() > 0
                ? own
                : rows.stream().filter(PlacedRow::isPlaced).toList();
    }

    private static BalanceSum sum(List<PlacedRow> rows) {
        return rows.stream().map(row -> row.sum(MassState.PREDICTED)).reduce(BalanceSum.ZERO, BalanceSum::plus);
    }

    private static Moments atCentre(Mass mass, BalanceSum rest) {
        Moments moments = rest.moments();
        return new Moments(
                share(moments.x(), mass, rest.mass()),
                share(moments.y(), mass, rest.mass()),
                share(moments.z(), mass, rest.mass()));
    }

    /** Rounded to the whole milligram-micrometre, so that sums stay exact. */
    private static Moment share(Moment moment, Mass mass, Mass of) {
        BigInteger times = moment.mgUm().multiply(BigInteger.valueOf(mass.mg()));
        return new Moment(new BigDecimal(times)
                .divide(BigDecimal.valueOf(of.mg()), 0, RoundingMode.HALF_UP)
                .toBigInteger());
    }

    /** Standard deviation of a place that may be anywhere between the outermost pieces. */
    private static double anywhereIn(List<PlacedRow> placed, Axis axis) {
        double[] least = placed.stream().mapToDouble(row -> row.leastMm(axis)).toArray();
        double[] most = placed.stream().mapToDouble(row -> row.mostMm(axis)).toArray();
        double width = DoubleStream.of(most).max().orElse(0)
                - DoubleStream.of(least).min().orElse(0);
        return width / Math.sqrt(12);
    }
}
