package dev.ledgerwing.report;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.JudgedBy;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.build.Outputs;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Builds for tests of sheets and of the command line. */
public final class Builds {

    /** A name that would run as markup, or as a formula, where somebody forgets to escape it. */
    public static final String HOSTILE_NAME = "=cmd()|'<script>alert(1)</script>&\"";

    private Builds() {}

    /**
     * A small airframe with something of everything: a part of unknown mass and station, one that stays at home, an extra
     * item, a booking, a hostile name.
     */
    public static Build skiff() {
        return new Build(
                new Airframe("skiff", "Skiff Żółw", "Tries sheets out.", Stage.BUILD, "nose tip"),
                new MassBudget(Mass.ofGrams(1500), Mass.ofGrams(25_000), CeilingIs.BELOW, null),
                JudgedBy.OWN_CHOICE,
                Geometry.NONE,
                List.of(
                        new Assembly("hull", "Hull", MovesWith.FUSELAGE),
                        new Assembly("wing", "Wing", MovesWith.WING),
                        new Assembly("tail", "Tail", MovesWith.TAIL)),
                lines(),
                List.of(survey(), bench()),
                List.of(),
                List.of(),
                List.of(),
                Power.NONE,
                Radio.NONE,
                Outputs.NONE,
                List.of(),
                new Booking(Mass.ofGrams(-7.5), "weighed whole after painting"),
                List.of());
    }

    /** The same with every mass known. */
    public static Build complete() {
        Build skiff = skiff();
        return skiff.withLines(skiff.lines().stream()
                .map(line -> line.isMassKnown() ? line : line.withMass(LineMass.of(Mass.ofGrams(20), Basis.WEIGHED)))
                .toList());
    }

    /** The same with wing, tail, limits and a pack to move: it balances inside its band in the design case, every station known. */
    public static Build winged() {
        Build complete = complete();
        List<PartLine> placed = complete.lines().stream()
                .map(line -> line.place().station() == null
                        ? line.withPlace(LinePlace.at(Station.atX(Length.ofMm(330))))
                        : line)
                .toList();
        return complete.withLines(
                        Stream.concat(placed.stream(), Stream.of(pack())).toList())
                .withLoadCases(List.of(survey(Station.atX(Length.ofMm(350))), bench()))
                .withBays(List.of(new Bay(
                        "bay",
                        "Pack bay",
                        Length.ofMm(180),
                        Length.ofMm(340),
                        null,
                        null,
                        null,
                        null,
                        List.of("L008"))))
                .withBooking(null)
                .withGeometry(geometry());
    }

    private static PartLine pack() {
        return line("L008", "hull", "Flight pack", Category.BATTERY, 1, 150, Basis.WEIGHED, 250)
                .withPlace(new LinePlace(
                        Station.atX(Length.ofMm(250)),
                        null,
                        null,
                        new LinePlace.Travel(Length.ofMm(200), Length.ofMm(320)),
                        new LinePlace.Size(Length.ofMm(40), Length.ofMm(30), Length.ofMm(20)),
                        null));
    }

    private static Geometry geometry() {
        Surface wing = new Surface(
                new Station(Length.ofMm(260), Length.ZERO, Length.ofMm(30)),
                true,
                List.of(panel(500, 180, 180, 0), panel(300, 180, 120, 30)));
        Surface tail = new Surface(Station.atX(Length.ofMm(820)), true, List.of(panel(200, 110, 90, 10)));
        return new Geometry(
                wing,
                new Tail(tail, 0.9),
                null,
                BalanceLimits.ofPercentMac(10, 34),
                new StaticMargin(5, 40),
                null,
                null,
                null,
                null);
    }

    private static Panel panel(double spanMm, double rootMm, double tipMm, double offsetMm) {
        return new Panel(Length.ofMm(spanMm), Length.ofMm(rootMm), Length.ofMm(tipMm), Length.ofMm(offsetMm), 2);
    }

    /** The same, {@code targetG} its target. */
    public static Build withTarget(Build build, double targetG) {
        return build.withBudget(new MassBudget(Mass.ofGrams(targetG), null, null, null));
    }

    /** The same without any target. */
    public static Build withoutTarget(Build build) {
        return build.withBudget(new MassBudget(null, null, null, null));
    }

    /** The same under another code. */
    public static Build called(Build build, String code, String name) {
        Airframe old = build.airframe();
        return build.withAirframe(new Airframe(code, name, old.purpose(), old.stage(), old.datum()));
    }

    private static List<PartLine> lines() {
        return List.of(
                line("L001", "hull", "Hull shell, glass on foam", Category.STRUCTURE, 1, 412.5, Basis.WEIGHED, 310),
                line("L002", "hull", HOSTILE_NAME, Category.AVIONICS, 1, 73, Basis.CATALOGUE, -12.5),
                PartLine.named("L003", "hull", "Wiring loom", Category.WIRING, 1, LineMass.notKnown()),
                line("L004", "wing", "Spar, carbon tube 14 mm", Category.STRUCTURE, 2, 56.25, Basis.WEIGHED, 402),
                line("L005", "wing", "Glue and covering", Category.FASTENING, 1, 60, Basis.GUESSED, 420),
                line("L006", "wing", "Screws M3", Category.FASTENING, 12, 0.85, Basis.CALCULATED, 410),
                line("L007", "hull", "Bench stand", Category.PAYLOAD, 1, 800, Basis.WEIGHED, 300));
    }

    private static PartLine line(
            String id,
            String assembly,
            String name,
            Category category,
            int quantity,
            double massG,
            Basis basis,
            double xMm) {
        return PartLine.named(id, assembly, name, category, quantity, LineMass.of(Mass.ofGrams(massG), basis))
                .withPlace(LinePlace.at(Station.atX(Length.ofMm(xMm))));
    }

    private static LoadCase survey() {
        return survey(null);
    }

    private static LoadCase survey(@Nullable Station bottles) {
        return new LoadCase(
                "survey",
                "Survey",
                LoadCase.Purpose.FLIGHT,
                true,
                List.of("L007"),
                Map.of(),
                List.of(),
                List.of(new ExtraItem("Sample bottles", Mass.ofGrams(300), Basis.GUESSED, bottles)));
    }

    private static LoadCase bench() {
        return new LoadCase(
                "bench", "On the bench", LoadCase.Purpose.GROUND, false, List.of(), Map.of(), List.of(), List.of());
    }

    /** Every text that a sheet of this build has to show. */
    public static Stream<String> namesOf(Build build) {
        return build.lines().stream().map(PartLine::name);
    }
}
