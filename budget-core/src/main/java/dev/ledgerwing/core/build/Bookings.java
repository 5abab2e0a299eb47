package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The bookings of a record: of the whole airframe, and of assemblies that were weighed by themselves. */
record Bookings(@Nullable Booking airframe, List<AssemblyBooking> assemblies) {

    /**
     * What is booked once the ledger of a part that was aboard is put right: the booking of its assembly takes the opposite, or
     * that of the airframe where its assembly has none. What stays at home in the design load case was not on the scales; once
     * weigh-ins are recorded, nor was a part that none of them names.
     */
    static Bookings correctedFor(Build build, PartLine before, PartLine after) {
        Bookings now = new Bookings(build.booking(), build.assemblyBookings());
        if (build.designCase().absent().contains(after.id()) || !wasWeighed(build, after)) {
            return now;
        }
        return build.bookingOf(after.assembly()).isPresent()
                ? new Bookings(now.airframe, now.assembly(after.assembly(), before, after))
                : new Bookings(without(now.airframe, before, after), now.assemblies);
    }

    private static boolean wasWeighed(Build build, PartLine line) {
        return build.weighIns().isEmpty()
                || build.weighIns().stream()
                        .anyMatch(weighIn -> weighIn.aboard().contains(line.id()));
    }

    Build in(Build build) {
        return build.withBooking(airframe).withAssemblyBookings(assemblies);
    }

    private List<AssemblyBooking> assembly(String code, PartLine before, PartLine after) {
        return assemblies.stream()
                .flatMap(booked -> {
                    Booking left = booked.assembly().equals(code)
                            ? without(booked.booking(), before, after)
                            : booked.booking();
                    return left == null
                            ? List.<AssemblyBooking>of().stream()
                            : List.of(new AssemblyBooking(booked.assembly(), left)).stream();
                })
                .toList();
    }

    /** Null once nothing is left. */
    private static @Nullable Booking without(@Nullable Booking booking, PartLine before, PartLine after) {
        if (booking == null) {
            return null;
        }
        Mass mass = booking.mass().minus(after.totalMass().minus(before.totalMass()));
        Moments was = moments(before);
        Moments is = moments(after);
        Moments booked = booking.moments();
        Moments left = booked == null || was == null || is == null ? null : booked.minus(is.minus(was));
        boolean nothing = mass.equals(Mass.ZERO) && (left == null || left.equals(Moments.ZERO));
        return nothing ? null : new Booking(mass, booking.reason(), left);
    }

    private static @Nullable Moments moments(PartLine line) {
        Station at = line.place().station();
        if (!line.isMassKnown()) {
            return Moments.ZERO;
        }
        if (at == null) {
            return null;
        }
        return Moments.of(
                line.totalMass(), line.place().mirroredAtY() == null ? at : new Station(at.x(), Length.ZERO, at.z()));
    }
}
