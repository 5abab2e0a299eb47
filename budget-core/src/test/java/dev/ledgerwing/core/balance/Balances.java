package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.LengthUnit;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.MassUnit;
import dev.ledgerwing.core.quantity.QuantityText;
import dev.ledgerwing.core.verdict.Finding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Weights at stations to balance, and wings to balance them by. */
final class Balances {

    private Balances() {}

    static Station at(double xMm, double yMm, double zMm) {
        return new Station(Length.ofMm(xMm), Length.ofMm(yMm), Length.ofMm(zMm));
    }

    /** A weighed mass without growth or error, at a station without error. */
    static PartLine certain(String id, double grams, double xMm) {
        return certain(id, grams, at(xMm, 0, 0));
    }

    static PartLine certain(String id, double grams, Station station) {
        return Ledgers.certain(id, grams).withPlace(new LinePlace(station, Length.ZERO, null, null, null, null));
    }

    static PartLine line(String id, LineMass mass, double xMm) {
        return Ledgers.line(id, Category.STRUCTURE, 1, mass).withPlace(LinePlace.at(at(xMm, 0, 0)));
    }

    static PartLine mirrored(String id, int quantity, double gramsEach, Station station, double yMm) {
        LineMass mass = new LineMass(Mass.ofGrams(gramsEach), Basis.WEIGHED, null, Mass.ZERO, null);
        return Ledgers.line(id, Category.SERVO, quantity, mass)
                .withPlace(new LinePlace(station, Length.ZERO, null, null, null, Length.ofMm(yMm)));
    }

    static PartLine sized(PartLine line, double lengthMm, double widthMm, double heightMm) {
        Size size = new Size(Length.ofMm(lengthMm), Length.ofMm(widthMm), Length.ofMm(heightMm));
        LinePlace was = line.place();
        return line.withPlace(
                new LinePlace(was.station(), was.stationUncertainty(), null, null, size, was.mirroredAtY()));
    }

    /** One weight at an arm as an American weighing sheet gives them: {@code "320 lb"}, {@code "-75 in"}. */
    static PartLine typed(String id, String weight, String arm) {
        return typed(id, weight, arm, "0 in");
    }

    static PartLine typed(String id, String weight, String arm, String lateral) {
        Station station = new Station(length(arm), length(lateral), Length.ZERO);
        LineMass mass = new LineMass(mass(weight), Basis.WEIGHED, null, Mass.ZERO, null);
        return Ledgers.line(id, Category.STRUCTURE, 1, mass)
                .withPlace(new LinePlace(station, Length.ZERO, null, null, null, null));
    }

    static Mass mass(String typed) {
        return QuantityText.mass(typed, MassUnit.LB).value().orElseThrow();
    }

    static Length length(String typed) {
        return QuantityText.length(typed, LengthUnit.IN).value().orElseThrow();
    }

    static double inches(double mm) {
        return mm / LengthUnit.IN.inMm();
    }

    static double pounds(Mass mass) {
        return mass.grams() / MassUnit.LB.inGrams();
    }

    static Panel panel(double spanMm, double rootMm, double tipMm, double tipOffsetMm, double dihedralDeg) {
        return new Panel(
                Length.ofMm(spanMm), Length.ofMm(rootMm), Length.ofMm(tipMm), Length.ofMm(tipOffsetMm), dihedralDeg);
    }

    static Surface mirroredWing(double apexXMm, Panel... panels) {
        return new Surface(at(apexXMm, 0, 0), true, List.of(panels));
    }

    static Planform planform(Panel... panels) {
        return Planform.of(mirroredWing(0, panels)).orElseThrow();
    }

    static Geometry geometry(
            @Nullable Surface wing,
            @Nullable Tail tail,
            @Nullable BalanceLimits limits,
            @Nullable StaticMargin margin) {
        return new Geometry(wing, tail, 0.0, limits, margin, null, null, null, null);
    }

    /** Limits in millimetres and nothing else. */
    static Build within(double forwardXMm, double aftXMm, PartLine... lines) {
        return Ledgers.with(lines)
                .withGeometry(geometry(
                        null, null, BalanceLimits.ofStations(Length.ofMm(forwardXMm), Length.ofMm(aftXMm)), null));
    }

    static Cg cg(Build build) {
        return BalanceStatement.of(build).design().cg(MassState.BASIC).orElseThrow();
    }

    static double cgInches(PartLine... lines) {
        return inches(cg(Ledgers.with(lines)).xMm());
    }

    static List<Finding> findings(Build build) {
        return BalanceFindings.of(BalanceStatement.of(build), Figures.METRIC);
    }

    static List<Finding> findings(String code, Build build) {
        return findings(build).stream()
                .filter(finding -> finding.code().equals(code))
                .toList();
    }

    static Finding finding(String code, Build build) {
        return findings(code, build).stream().findFirst().orElseThrow();
    }
}
