package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Airframes to trim: parts whose masses and stations are certain unless a test says otherwise. */
final class Trims {

    private Trims() {}

    /** Limits in millimetres, no wing, parts of nose, wing, fuselage and tail. */
    static Build between(double forwardMm, double aftMm, PartLine... lines) {
        return Ledgers.with()
                .withAssemblies(assemblies())
                .withLines(List.of(lines))
                .withGeometry(limits(BalanceLimits.ofStations(Length.ofMm(forwardMm), Length.ofMm(aftMm))));
    }

    static Geometry limits(@Nullable BalanceLimits limits) {
        return new Geometry(null, null, null, limits, null, null, null, Length.ZERO, null);
    }

    /** A weighed part that is certain: no growth, no uncertainty. */
    static PartLine part(String id, String assembly, Category category, double grams, double xMm) {
        LineMass mass = new LineMass(Mass.ofGrams(grams), Basis.WEIGHED, null, Mass.ZERO, null);
        return PartLine.named(id, assembly, "Part " + id, category, 1, mass).withPlace(LinePlace.at(at(xMm)));
    }

    static PartLine part(String id, double grams, double xMm) {
        return part(id, "fuselage", Category.STRUCTURE, grams, xMm);
    }

    static PartLine movable(PartLine line, double fromMm, double toMm) {
        LinePlace place = line.place();
        return line.withPlace(new LinePlace(
                place.station(),
                place.stationUncertainty(),
                place.stowedStation(),
                new Travel(Length.ofMm(fromMm), Length.ofMm(toMm)),
                place.size(),
                place.mirroredAtY()));
    }

    static PartLine sized(PartLine line, double lengthMm, double widthMm, double heightMm) {
        LinePlace place = line.place();
        return line.withPlace(new LinePlace(
                place.station(),
                place.stationUncertainty(),
                place.stowedStation(),
                place.travel(),
                new Size(Length.ofMm(lengthMm), Length.ofMm(widthMm), Length.ofMm(heightMm)),
                place.mirroredAtY()));
    }

    static Station at(double xMm) {
        return Station.atX(Length.ofMm(xMm));
    }

    /** A rectangular wing of 300 mm chord and 1.5 m span, its leading edge at a station. */
    static Surface wing(double leadingEdgeMm) {
        return new Surface(
                at(leadingEdgeMm),
                true,
                List.of(new Panel(Length.ofMm(750), Length.ofMm(300), Length.ofMm(300), Length.ZERO, 0)));
    }

    static Tail tail(double leadingEdgeMm) {
        return new Tail(
                new Surface(
                        at(leadingEdgeMm),
                        true,
                        List.of(new Panel(Length.ofMm(250), Length.ofMm(160), Length.ofMm(160), Length.ZERO, 0))),
                0.9);
    }

    static Geometry drawn(@Nullable BalanceLimits limits, @Nullable StaticMargin margin) {
        return new Geometry(wing(500), tail(1300), null, limits, margin, 0.4, Length.ofMm(380), Length.ZERO, null);
    }

    static List<Assembly> assemblies() {
        return List.of(
                new Assembly("nose", "Nose", MovesWith.NOSE),
                new Assembly("wing", "Wing", MovesWith.WING),
                new Assembly("fuselage", "Fuselage", MovesWith.FUSELAGE),
                new Assembly("tail", "Tail", MovesWith.TAIL));
    }
}
