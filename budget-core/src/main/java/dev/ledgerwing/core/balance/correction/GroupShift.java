package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Moment;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Shifts along x on the drawing all that moves with one part of the airframe: its lines with their travel and wherever a load case puts
 * them, the bays that hold nothing else, and what was booked on its assemblies.
 */
record GroupShift(MovesWith group, Length by) {

    Build on(Build build) {
        Set<String> lines = lines(build);
        AlongX shift = new AlongX(by);
        return build.withLines(build.lines().stream()
                        .map(line ->
                                lines.contains(line.id()) ? line.withPlace(shift.ofSurroundings(line.place())) : line)
                        .toList())
                .withLoadCases(build.loadCases().stream()
                        .map(each -> shifted(each, lines))
                        .toList())
                .withBays(build.bays().stream().map(bay -> shifted(bay, lines)).toList())
                .withAssemblyBookings(build.assemblyBookings().stream()
                        .map(booked -> assemblies(build).contains(booked.assembly()) ? shifted(booked) : booked)
                        .toList());
    }

    /** Codes of the assemblies that move. */
    Set<String> assemblies(Build build) {
        return build.assemblies().stream()
                .filter(assembly -> assembly.movesWith() == group)
                .map(Assembly::code)
                .collect(Collectors.toUnmodifiableSet());
    }

    private Set<String> lines(Build build) {
        Set<String> assemblies = assemblies(build);
        return build.lines().stream()
                .filter(line -> assemblies.contains(line.assembly()))
                .map(PartLine::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    private LoadCase shifted(LoadCase loadCase, Set<String> lines) {
        Map<String, Station> moved = new TreeMap<>(loadCase.moved());
        moved.replaceAll((line, station) -> lines.contains(line) ? new AlongX(by).of(station) : station);
        return new LoadCase(
                loadCase.code(),
                loadCase.name(),
                loadCase.purpose(),
                loadCase.design(),
                loadCase.absent(),
                moved,
                loadCase.stowed(),
                loadCase.extra());
    }

    private Bay shifted(Bay bay, Set<String> lines) {
        return bay.holds().isEmpty() || !lines.containsAll(bay.holds())
                ? bay
                : new Bay(
                        bay.code(),
                        bay.name(),
                        bay.fromX().plus(by),
                        bay.toX().plus(by),
                        bay.fromY(),
                        bay.toY(),
                        bay.fromZ(),
                        bay.toZ(),
                        bay.holds());
    }

    private AssemblyBooking shifted(AssemblyBooking booked) {
        Booking booking = booked.booking();
        Moments at = booking.moments();
        if (at == null) {
            return booked;
        }
        Moments shifted = new Moments(at.x().plus(Moment.of(booking.mass(), by)), at.y(), at.z());
        return new AssemblyBooking(booked.assembly(), new Booking(booking.mass(), booking.reason(), shifted));
    }
}
