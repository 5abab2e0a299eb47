package dev.ledgerwing.core.build;

import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Records to test with: a small one made by hand and any number of seeded ones. */
public final class Builds {

    private Builds() {}

    public static Airframe airframe(String name) {
        return new Airframe("dunlin", name, null, Stage.DESIGN, "nose tip, reference line level");
    }

    public static MassBudget target(double grams) {
        return new MassBudget(Mass.ofGrams(grams), null, null, null);
    }

    /** Two assemblies, three lines: a guessed spar, two weighed servos, glue. */
    public static Build small() {
        return Build.blank(airframe("Dunlin"), target(2000))
                .withAssemblies(List.of(
                        new Assembly("wing", "Wing", Assembly.MovesWith.WING),
                        new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                .withLines(List.of(
                        line(
                                "L001",
                                "wing",
                                "Spar",
                                Category.STRUCTURE,
                                1,
                                LineMass.of(Mass.ofGrams(120), Basis.GUESSED)),
                        line(
                                "L002",
                                "wing",
                                "Servo",
                                Category.SERVO,
                                2,
                                LineMass.of(Mass.ofGrams(12.5), Basis.WEIGHED)),
                        line(
                                "L003",
                                "nose",
                                "Glue",
                                Category.FASTENING,
                                1,
                                LineMass.of(Mass.ofGrams(30), Basis.GUESSED))));
    }

    public static PartLine line(
            String id, String assembly, String name, Category category, int quantity, LineMass mass) {
        return PartLine.named(id, assembly, name, category, quantity, mass);
    }

    /** A record with anything in it that a record may hold; the same for the same seed. */
    public static Build seeded(long seed) {
        Random random = new Random(seed);
        List<Assembly> assemblies = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            assemblies.add(new Assembly("a" + i, "Assembly " + i, pick(random, Assembly.MovesWith.values())));
        }
        List<PartLine> lines = new ArrayList<>();
        for (int i = 0; i < random.nextInt(30); i++) {
            lines.add(seededLine(random, "L" + i, "a" + random.nextInt(assemblies.size())));
        }
        Build blank = Build.blank(airframe("Dunlin"), target(1000 + random.nextInt(5000)));
        return new Build(
                blank.airframe(),
                blank.budget(),
                blank.judgedBy(),
                seededGeometry(random),
                assemblies,
                lines,
                loadCases(random, lines),
                List.of(bay(ids(lines, 2))),
                lines.size() < 2
                        ? List.of()
                        : List.of(new KeepApart("K1", "Compass away from the motor", "L0", "L1", Length.ofMm(120))),
                List.of(
                        new Phase("power-on", "Power on", 2.0, false, null, List.of("cruise"), false),
                        new Phase("cruise", "Cruise", null, true, "all-up", List.of(), true)),
                seededPower(random),
                seededRadio(random),
                seededOutputs(random, lines),
                List.of(weighIn("W1", ids(lines, 20))),
                random.nextBoolean() ? new Booking(Mass.ofGrams(-12.345), "weighed on the hall scales") : null,
                List.of(new AssemblyBooking(
                        "a0",
                        new Booking(
                                new Mass(random.nextInt(30_000)),
                                "weighed with its glue",
                                Moments.of(new Mass(random.nextInt(30_000)), station(random))))));
    }

    private static Radio seededRadio(Random random) {
        RadioFunction gear = new RadioFunction(
                "gear",
                "Gear",
                RadioFunction.Kind.SWITCHED,
                List.of("up", "down"),
                RadioFunction.Criticality.MISSION,
                false,
                random.nextBoolean() ? "down" : null,
                pick(random, RadioFunction.DecodedBy.values()),
                Map.of("power-on", new Demand(List.of(), List.of("down")), "cruise", Demand.select("up", "down")),
                null);
        RadioFunction lights = new RadioFunction(
                "lights",
                "Lights",
                RadioFunction.Kind.SWITCHED,
                List.of("off", "dim", "full"),
                RadioFunction.Criticality.CONVENIENCE,
                false,
                null,
                RadioFunction.DecodedBy.TABLE,
                Map.of("cruise", Demand.select("dim")),
                random.nextBoolean() ? null : RadioFunction.OtherwiseBy.DATA_LINK);
        return new Radio(
                new RadioLink(
                        4 + random.nextInt(4),
                        pick(random, RadioLink.OnLoss.values()),
                        pick(random, RadioLink.ActsOnLoss.values()),
                        pick(random, RadioLink.BoardLearnsBy.values()),
                        random.nextBoolean() ? null : new PulseTrain(22_500.0, 2000, 2500)),
                List.of(
                        Control.of("left-stick", "Left stick, up and down", Control.Kind.STICK),
                        Control.ofSwitch("a", "Left switch", 2),
                        Control.ofSwitch("b", "Right switch", 3),
                        new Control("a-b", "Left and right switch", Control.Kind.MIXED, 6, List.of("a", "b"))),
                List.of(gear, lights),
                List.of(new Channel(
                        1 + random.nextInt(4),
                        "a",
                        random.nextBoolean(),
                        List.of(
                                new Channel.Carried("gear", List.of("down", "up"), "down"),
                                new Channel.Carried("lights", List.of("off", "dim"), null)))),
                List.of(new NotNeeded(
                        "N1",
                        random.nextBoolean() ? List.of() : List.of("cruise"),
                        List.of(
                                new NotNeeded.FunctionState("gear", "up"),
                                new NotNeeded.FunctionState("lights", "off")),
                        "Mara",
                        "nobody flies it in the dark")));
    }

    private static Outputs seededOutputs(Random random, List<PartLine> lines) {
        Board board = new Board(
                "small",
                "Small board",
                List.of(
                        new OutputBank("A", List.of(1, 2, 3, 4), List.of(50.0, 400.0), List.of(PulseKind.values())),
                        new OutputBank("B", List.of(5, 6), List.of(), List.of())),
                random.nextInt(5),
                1,
                null,
                2,
                Mass.ofGrams(38.2),
                0.22,
                0.38,
                null);
        return new Outputs(
                List.of(board),
                new FittedBoard("small", lines.isEmpty() ? null : lines.get(0).id()),
                List.of(new Output(
                        "left-aileron",
                        "Left aileron",
                        random.nextBoolean() ? null : 1 + random.nextInt(6),
                        lines.isEmpty()
                                ? List.of()
                                : List.of(new Output.Driven(lines.get(0).id(), 1)),
                        pick(random, PulseKind.values()),
                        333.0,
                        50.0,
                        1000.0,
                        2000.0,
                        null,
                        random.nextBoolean())));
    }

    private static Power seededPower(Random random) {
        PowerSource cells = PowerSource.solar(
                "cells",
                "Cells on the wing",
                null,
                new SolarArray(
                        60.0,
                        18.5,
                        22.0,
                        3.4,
                        -0.4,
                        random.nextBoolean() ? -0.3 : null,
                        4,
                        90,
                        true,
                        pick(random, SolarArray.Connection.values()),
                        95.0,
                        "gear"));
        return new Power(
                List.of(PowerSource.battery("pack", "Pack", null, pack(6)), cells),
                List.of(
                        new Rail("drive", "Drive", 22.2, 18.0, 25.2, false),
                        new Rail("main", "Main rail", 5.0, 4.8, null, random.nextBoolean())),
                List.of(
                        new Feed("pack-drive", "Pack to drive", "pack", "drive", seededElements(random)),
                        new Feed("drive-main", "Drive to main", "drive", "main", List.of(regulator(5)))),
                random.nextBoolean() ? PowerRules.DEFAULT : rules(random.nextInt(90), random.nextInt(30)),
                random.nextBoolean() ? null : day("cruise"));
    }

    private static List<FeedElement> seededElements(Random random) {
        return List.of(
                FeedElement.wire("Leads", wire(10 + random.nextInt(5), 250, 2)),
                FeedElement.rated("Fuse", FeedElement.Kind.FUSE, 60.0),
                new FeedElement(
                        "Switches",
                        FeedElement.Kind.SWITCH,
                        20.0,
                        40.0,
                        3,
                        pick(random, FeedElement.Sharing.values()),
                        2.5,
                        null,
                        FeedElement.SwitchedLoad.MOTOR,
                        null,
                        null),
                FeedElement.diode("Diode", 60.0, 0.45));
    }

    /** A pack of lithium polymer cells, all its values known. */
    public static Pack pack(int seriesCells) {
        return new Pack(
                Pack.Chemistry.LITHIUM_POLYMER,
                seriesCells,
                1,
                10_000.0,
                15.0,
                30.0,
                2.0,
                80.0,
                1.0,
                null,
                null,
                null,
                true);
    }

    public static WireRun wire(int awg, double lengthMm, int conductors) {
        return new WireRun(awg, Length.ofMm(lengthMm), conductors, WireRun.Routing.BUNDLE, 105.0);
    }

    /** A switching regulator of 6 A, all its values known. */
    public static FeedElement regulator(double outputV) {
        return FeedElement.regulator(
                "Regulator", 6.0, 8.0, new Regulator(Regulator.Type.SWITCHING, outputV, 90.0, 1.0, 6.5, 30.0, 0.008));
    }

    private static PowerRules rules(double reservePercent, double minutes) {
        return new PowerRules(
                reservePercent, null, null, null, null, null, null, null, null, null, null, 60.0, minutes, null, null);
    }

    private static SolarDay day(String phase) {
        return new SolarDay("Moss", 53.5, -2.25, LocalDate.of(2026, 6, 21), 1, 150, 15, 100, 90, null, 6, 100, phase);
    }

    private static List<String> ids(List<PartLine> lines, int most) {
        return lines.stream().map(PartLine::id).limit(most).toList();
    }

    private static Geometry seededGeometry(Random random) {
        Surface wing = new Surface(
                station(random),
                true,
                List.of(new Panel(
                        Length.ofMm(500 + random.nextInt(900)),
                        Length.ofMm(300),
                        Length.ofMm(random.nextInt(300)),
                        new Length(random.nextInt(90_000)),
                        random.nextInt(6))));
        return new Geometry(
                random.nextInt(4) == 0 ? null : wing,
                random.nextBoolean() ? new Tail(wing, 0.9) : null,
                random.nextBoolean() ? -5.0 : null,
                random.nextBoolean()
                        ? BalanceLimits.ofPercentMac(28, 38)
                        : BalanceLimits.ofStations(Length.ofMm(95), Length.ofMm(105)),
                random.nextBoolean() ? new StaticMargin(5, 15) : null,
                random.nextBoolean() ? 0.4 : null,
                random.nextBoolean() ? Length.ofMm(380) : null,
                random.nextBoolean() ? Length.ofMm(2.5) : null,
                random.nextBoolean() ? Length.ofMm(4) : null);
    }

    public static Bay bay(List<String> holds) {
        return new Bay(
                "pack-bay",
                "Pack bay",
                Length.ofMm(150),
                Length.ofMm(340),
                Length.ofMm(-40),
                Length.ofMm(40),
                null,
                null,
                holds);
    }

    public static WeighIn weighIn(String id, List<String> aboard) {
        return new WeighIn(
                id,
                "On the hall scales",
                LocalDate.of(2026, 8, 2),
                null,
                aboard,
                List.of(new LoadCase.ExtraItem("Strap", Mass.ofGrams(30), Basis.WEIGHED, null)),
                new WeighIn.Scale(Mass.ofGrams(1), Mass.ofGrams(2)),
                Length.ofMm(0.5),
                0,
                12.5,
                List.of(new WeighIn.Support(
                        "Nose wheel",
                        Station.atX(Length.ofMm(52)),
                        Mass.ofGrams(710),
                        Mass.ofGrams(4),
                        Mass.ofGrams(640.5))),
                new WeighIn.LedgerWeighed(3, "ab12", Mass.ofGrams(705), null));
    }

    private static List<LoadCase> loadCases(Random random, List<PartLine> lines) {
        List<String> absent = lines.stream()
                .map(PartLine::id)
                .filter(id -> random.nextInt(5) == 0)
                .toList();
        LoadCase ground = new LoadCase(
                "ground",
                "Ground",
                LoadCase.Purpose.GROUND,
                false,
                absent,
                lines.isEmpty() ? Map.of() : Map.of(lines.get(0).id(), station(random)),
                List.of(),
                List.of(new LoadCase.ExtraItem("Bottle", Mass.ofGrams(300), Basis.GUESSED, null)));
        return List.of(LoadCase.everythingAboard(), ground);
    }

    /** A line with random contents. */
    public static PartLine seededLine(Random random, String id, String assembly) {
        Basis basis = pick(random, Basis.values());
        return new PartLine(
                id,
                assembly,
                "Part " + id + (random.nextInt(9) == 0 ? " <b>“Ż”</b>" : ""),
                pick(random, Category.values()),
                2 * (1 + random.nextInt(4)),
                new LineMass(
                        random.nextInt(10) == 0 ? null : new Mass(random.nextInt(500_000)),
                        basis,
                        basis == Basis.WEIGHED ? pick(random, WeighedAs.values()) : null,
                        random.nextInt(4) == 0 ? new Mass(random.nextInt(900)) : null,
                        random.nextInt(4) == 0 ? (double) random.nextInt(40) : null),
                new LinePlace(
                        random.nextBoolean() ? station(random) : null,
                        random.nextBoolean() ? new Length(random.nextInt(9000)) : null,
                        null,
                        random.nextBoolean() ? new Travel(new Length(-5), new Length(random.nextInt(90_000))) : null,
                        random.nextBoolean() ? new Size(new Length(1), new Length(2), new Length(3)) : null,
                        random.nextBoolean() ? new Length(250_000) : null),
                pick(random, FitState.values()),
                new Supply(random.nextBoolean() ? "SV-09" : null, List.of("0031"), null, 18.25),
                random.nextBoolean() ? "note\nof two lines" : null,
                List.of("gear"),
                List.of(new ElectricalLoad(
                        "main",
                        ElectricalLoad.Draws.CONSTANT_CURRENT,
                        0.12,
                        null,
                        4.8,
                        5.5,
                        Map.of("cruise", 0.5, "power-on", 1.0),
                        null,
                        random.nextBoolean() ? wire(24, 300, 3) : null)),
                new PortNeeds(random.nextInt(2), 0, List.of("0x1e"), 0, 0));
    }

    private static Station station(Random random) {
        return new Station(new Length(random.nextInt(1_500_000) - 200_000), new Length(random.nextInt(5)), Length.ZERO);
    }

    public static <T> T pick(Random random, T[] values) {
        return values[random.nextInt(values.length)];
    }
}
