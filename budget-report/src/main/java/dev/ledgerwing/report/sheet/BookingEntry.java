package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** What is booked from the scales and explained by no line yet. */
public record BookingEntry(String what, String mass, String station, String reason) {

    static List<BookingEntry> of(Build build, Figures units) {
        List<BookingEntry> entries = new ArrayList<>();
        Booking whole = build.booking();
        if (whole != null) {
            entries.add(entry("whole airframe", whole, units));
        }
        build.assemblyBookings()
                .forEach(booked -> entries.add(entry(
                        build.assembly(booked.assembly()).map(Assembly::name).orElse(booked.assembly()),
                        booked.booking(),
                        units)));
        return entries;
    }

    private static BookingEntry entry(String what, Booking booking, Figures units) {
        Moments moments = booking.moments();
        String station = moments == null || booking.mass().mg() == 0
                ? "not known"
                : units.length(Length.ofMm(moments.x().armMm(booking.mass())));
        return new BookingEntry(what, units.signedMass(booking.mass()), station, booking.reason());
    }
}
