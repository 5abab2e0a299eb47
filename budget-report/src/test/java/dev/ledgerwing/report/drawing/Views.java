package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import dev.ledgerwing.report.drawing.BalanceView.Chord;
import dev.ledgerwing.report.drawing.BalanceView.PlanPanel;
import dev.ledgerwing.report.drawing.BalanceView.PlanPoint;
import dev.ledgerwing.report.drawing.PartMark.Kind;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Invented airframes to draw. */
final class Views {

    private Views() {}

    /** A wing of one rectangular and one tapered panel a side, a tail, four load cases, parts of every kind. */
    static BalanceView skiff() {
        return new BalanceView(
                "Skiff",
                List.of(
                        panel(0, 800, 520, 840, 520, 840),
                        panel(0, -800, 520, 840, 520, 840),
                        panel(800, 1600, 520, 840, 560, 760),
                        panel(-800, -1600, 520, 840, 560, 760)),
                List.of(panel(0, 380, 1500, 1680, 1520, 1670), panel(0, -380, 1500, 1680, 1520, 1670)),
                new Chord(528, 296, 770, true),
                new BandView(610.9, 640.5, false),
                new BandView(608, 645, true),
                662.0,
                cases(0),
                parts());
    }

    /** The same with its CG 9 mm further forward. */
    static BalanceView skiffCorrected() {
        BalanceView skiff = skiff();
        return new BalanceView(
                skiff.airframe(),
                skiff.wing(),
                skiff.tail(),
                skiff.chord(),
                skiff.band(),
                skiff.bandFromNeutral(),
                skiff.neutralPointXMm(),
                cases(-9),
                skiff.parts());
    }

    /** No wing, no tail: stations, parts and limits in millimetres. */
    static BalanceView kit() {
        BalanceView skiff = skiff();
        return new BalanceView(
                "Kit", List.of(), List.of(), null, skiff.band(), null, null, skiff.cases(), skiff.parts());
    }

    /** A wing of one metre by one metre. */
    static BalanceView square() {
        return new BalanceView(
                "Square",
                List.of(panel(0, 500, 0, 1000, 0, 1000), panel(0, -500, 0, 1000, 0, 1000)),
                List.of(),
                new Chord(0, 1000, 250, true),
                new BandView(200, 300, true),
                null,
                null,
                List.of(),
                List.of());
    }

    /** As many parts as somebody may have lines, of 1 to 1000 g. */
    static BalanceView withParts(int count) {
        return of(
                List.of(),
                IntStream.range(0, count)
                        .mapToObj(index -> part("Part " + index, 1 + index % 1000, index * 79 % 1500, null, Kind.FIXED))
                        .toList());
    }

    /** A CG of some of what is aboard. */
    static BalanceView unplaced() {
        CgView cg = new CgView(600, 0, 2.0);
        return of(List.of(new CaseView("all-up", "All up", true, true, 3, "unknown", cg, cg)), parts());
    }

    private static BalanceView of(List<CaseView> cases, List<PartMark> parts) {
        return new BalanceView("Kit", List.of(), List.of(), null, null, null, null, cases, parts);
    }

    /** Nothing is known yet. */
    static BalanceView blank() {
        return new BalanceView(
                "Blank",
                List.of(),
                List.of(),
                null,
                null,
                null,
                null,
                List.of(new CaseView("all-up", "All up", true, true, 0, "unknown", null, null)),
                List.of());
    }

    private static List<CaseView> cases(double shiftMm) {
        return List.of(
                loadCase("survey", "Survey, everything aboard, gear up", true, "tight", 638.4 + shiftMm),
                loadCase("ferry", "Ferry without payload", false, "holds", 629.2 + shiftMm),
                loadCase("cold", "Survey with the large pack & the <bottle>", false, "breaks", 644.1 + shiftMm),
                new CaseView(
                        "bench",
                        "On the bench, flight pack out",
                        false,
                        false,
                        2,
                        "unknown",
                        new CgView(691, 0, 2.2),
                        null));
    }

    private static CaseView loadCase(String code, String name, boolean design, String verdict, double xMm) {
        return new CaseView(
                code, name, true, design, 0, verdict, new CgView(xMm, 3, 1.4), new CgView(xMm + 2.3, 3, 1.9));
    }

    private static List<PartMark> parts() {
        return List.of(
                part("Flight pack, 6 cells in line", 1134, 322, null, Kind.MOVABLE),
                part("Nose shell, glass on foam", 173, 150, null, Kind.FIXED),
                part("Standby pack", 96, 260, null, Kind.MOVABLE),
                part("Pod shell", 412, 640, null, Kind.FIXED),
                part("Motor", 271, 905, null, Kind.FIXED),
                part("Motor controller", 62, 800, null, Kind.FIXED),
                part("Boom, carbon tube", 188, 1250, null, Kind.FIXED),
                part("Wing panels", 1240, 665, 500.0, Kind.FIXED),
                part("Servos, aileron", 57, 700, 1150.0, Kind.FIXED),
                part("Tailplane and fin", 210, 1580, null, Kind.FIXED),
                part("Sampler", 540, 560, null, Kind.FIXED),
                part("Camera", 320, 480, null, Kind.FIXED),
                part("Sample bottles", 300, 590, null, Kind.EXTRA),
                part("Wiring loom", 140, 560, null, Kind.FIXED),
                part("Receiver", 18, 430, null, Kind.FIXED),
                part("Board", 38, 455, null, Kind.FIXED),
                new PartMark("Glue and filler", Mass.ofGrams(90), null, null, Kind.FIXED),
                new PartMark("Paint", null, null, null, Kind.FIXED));
    }

    private static PartMark part(String name, double massG, double xMm, @Nullable Double mirroredAtYMm, Kind kind) {
        return new PartMark(name, Mass.ofGrams(massG), Station.atX(Length.ofMm(xMm)), mirroredAtYMm, kind);
    }

    private static PlanPanel panel(
            double rootY, double tipY, double rootFront, double rootBack, double tipFront, double tipBack) {
        return new PlanPanel(List.of(
                new PlanPoint(rootFront, rootY),
                new PlanPoint(tipFront, tipY),
                new PlanPoint(tipBack, tipY),
                new PlanPoint(rootBack, rootY)));
    }
}
