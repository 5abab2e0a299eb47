package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Airframes out of trim, the same for the same seed: up to three flight cases that move, stow and leave out parts, travels, bays and rules
 * to keep apart, limits of every kind, growth, uncertainties and bookings.
 */
final class SeededTrims {

    private final Random random;

    private SeededTrims(long seed) {
        this.random = new Random(seed);
    }

    static Build of(long seed) {
        return new SeededTrims(seed).build();
    }

    private Build build() {
        List<PartLine> lines = lines();
        Build build = Ledgers.with()
                .withAssemblies(Trims.assemblies())
                .withLines(lines)
                .withGeometry(geometry(null, null))
                .withLoadCases(cases());
        if (chance(3)) {
            build = build.withBooking(new Booking(grams(-40, 80), "weighed"));
        }
        double cgMm = BalanceStatement.of(build)
                .design()
                .cg(MassState.PREDICTED)
                .orElseThrow()
                .xMm();
        return placed(build).withGeometry(limits(cgMm + within(-30, 30)));
    }

    private List<PartLine> lines() {
        List<PartLine> lines = new ArrayList<>();
        lines.add(line(0, "nose", Category.PROPULSION, 60, 160));
        lines.add(travelling(line(1, "fuselage", Category.BATTERY, 250, 450)));
        lines.add(travelling(line(2, "fuselage", Category.RADIO, 300, 800)));
        lines.add(line(3, "wing", Category.STRUCTURE, 520, 700));
        lines.add(line(4, "tail", Category.STRUCTURE, 1200, 1400));
        lines.add(line(5, "fuselage", chance(2) ? Category.PAYLOAD : Category.BALLAST, 100, 1300));
        int more = 2 + random.nextInt(4);
        for (int i = 6; i < 6 + more; i++) {
            lines.add(line(i, "fuselage", Category.AVIONICS, 100, 1100));
        }
        return lines;
    }

    private PartLine line(int number, String assembly, Category category, double fromMm, double toMm) {
        boolean weighed = chance(2);
        LineMass mass = new LineMass(
                grams(30, number == 3 ? 900 : 300),
                weighed ? Basis.WEIGHED : Basis.CATALOGUE,
                null,
                chance(3) ? null : grams(0, 2),
                chance(2) ? within(0, 12) : null);
        LinePlace place = new LinePlace(
                station(within(fromMm, toMm)),
                chance(2) ? Length.ofMm(within(0, 4)) : null,
                number == 7 || chance(3) ? station(within(fromMm, toMm)) : null,
                null,
                new Size(length(20, 90), length(10, 60), length(10, 60)),
                null);
        return PartLine.named("L" + number, assembly, "Part " + number, category, 1, mass)
                .withPlace(place);
    }

    private PartLine travelling(PartLine line) {
        LinePlace place = line.place();
        double xMm = known(place.station()).x().mm();
        Travel travel = new Travel(Length.ofMm(xMm - within(0, 120)), Length.ofMm(xMm + within(0, 120)));
        return line.withPlace(new LinePlace(
                place.station(), place.stationUncertainty(), place.stowedStation(), travel, place.size(), null));
    }

    private List<LoadCase> cases() {
        List<LoadCase> cases = new ArrayList<>(List.of(LoadCase.everythingAboard()));
        int more = random.nextInt(3);
        for (int i = 0; i < more; i++) {
            cases.add(new LoadCase(
                    "case-" + i,
                    "Case " + i,
                    chance(5) ? Purpose.GROUND : Purpose.FLIGHT,
                    false,
                    chance(2) ? List.of("L5") : List.of(),
                    chance(3) ? Map.of("L" + (1 + random.nextInt(3)), station(within(250, 800))) : Map.of(),
                    stowed(),
                    List.of()));
        }
        return cases;
    }

    private List<String> stowed() {
        return chance(3) ? List.of("L7") : List.of();
    }

    /** With a bay for the pack, and a rule to keep the other moving part clear of it. */
    private Build placed(Build build) {
        Build placed = build;
        if (chance(2)) {
            double xMm =
                    known(build.line("L1").orElseThrow().place().station()).x().mm();
            placed = placed.withBays(List.of(new Bay(
                    "bay",
                    "Bay",
                    Length.ofMm(xMm - within(40, 140)),
                    Length.ofMm(xMm + within(40, 140)),
                    null,
                    null,
                    null,
                    null,
                    List.of("L1"))));
        }
        if (chance(2)) {
            placed = placed.withKeepApart(List.of(
                    new KeepApart("K1", "Receiver clear of the pack", "L2", "L1", length(10, 80)),
                    new KeepApart("K2", "Receiver clear of the rest", "L6", "L2", length(10, 80))));
        }
        return placed;
    }

    private Geometry limits(double middleMm) {
        double halfMm = within(7, 28);
        double forward = (middleMm - halfMm - 500) / 3;
        return switch (random.nextInt(4)) {
            case 0 -> geometry(BalanceLimits.ofPercentMac(forward, forward + 2 * halfMm / 3), null);
            case 1 -> geometry(null, new StaticMargin(5, 5 + 2 * halfMm / 3));
            default ->
                geometry(
                        BalanceLimits.ofStations(Length.ofMm(middleMm - halfMm), Length.ofMm(middleMm + halfMm)), null);
        };
    }

    private Geometry geometry(@Nullable BalanceLimits limits, @Nullable StaticMargin margin) {
        boolean drawn = margin != null || (limits != null && limits.forwardPercentMac() != null) || chance(2);
        return new Geometry(
                drawn ? Trims.wing(500) : null,
                drawn ? Trims.tail(1300) : null,
                null,
                limits,
                margin,
                within(0, 0.8),
                Length.ofMm(250),
                chance(4) ? null : length(0, 1),
                null);
    }

    private static Station known(@Nullable Station station) {
        if (station == null) {
            throw new IllegalStateException("every part here has a station");
        }
        return station;
    }

    private Station station(double xMm) {
        return new Station(Length.ofMm(xMm), length(-20, 20), length(-20, 20));
    }

    private Mass grams(double from, double to) {
        return Mass.ofGrams(within(from, to));
    }

    private Length length(double from, double to) {
        return Length.ofMm(within(from, to));
    }

    private double within(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }
}
