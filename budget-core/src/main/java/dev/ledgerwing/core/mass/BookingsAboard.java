package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.PartLine;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The bookings that are aboard a load case: that of the airframe always, that of an assembly unless every line of the assembly
 * stays at home.
 */
public record BookingsAboard(Optional<Booking> airframe, List<AssemblyBooking> assemblies) {

    public BookingsAboard {
        assemblies = List.copyOf(assemblies);
    }

    public static BookingsAboard of(Build build, LoadCase loadCase) {
        return new BookingsAboard(
                Optional.ofNullable(build.booking()),
                build.assemblyBookings().stream()
                        .filter(booked -> isAboard(build, booked.assembly(), loadCase))
                        .toList());
    }

    private static boolean isAboard(Build build, String assembly, LoadCase loadCase) {
        List<String> lines = build.lines().stream()
                .filter(line -> line.assembly().equals(assembly))
                .map(PartLine::id)
                .toList();
        return lines.isEmpty() || !loadCase.absent().containsAll(lines);
    }

    public List<Booking> all() {
        return Stream.concat(airframe.stream(), assemblies.stream().map(AssemblyBooking::booking))
                .toList();
    }
}
