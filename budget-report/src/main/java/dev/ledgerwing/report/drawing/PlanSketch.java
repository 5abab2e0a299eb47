package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import dev.ledgerwing.report.drawing.BalanceView.Chord;

/**
 * The airframe from above, nose up, one scale for both axes. Labels stand where nothing is drawn: the stations left of the airframe,
 * the chord ahead of the wing, the rest behind it.
 */
final class PlanSketch {

    private static final double LARGEST_PART = 9;
    private static final double CG_RADIUS = 6;

    private final Board board;
    private final Plate plate;
    private final double lowMm;
    private final double highMm;
    private final double halfSpanMm;
    private final double gutter;
    private final PlanScale scale;

    /** Drawn from {@code top} on. */
    PlanSketch(Board board, double top) {
        this.board = board;
        this.plate = board.plate();
        this.lowMm = Math.min(
                0, board.views().flatMapToDouble(BalanceView::reachXMm).min().orElse(0));
        this.highMm = board.views().flatMapToDouble(BalanceView::reachXMm).max().orElse(0);
        this.halfSpanMm = board.views()
                .flatMap(BalanceView::corners)
                .mapToDouble(corner -> Math.abs(corner.yMm()))
                .max()
                .orElse(1);
        this.gutter = Board.EDGE + plate.smallLetters().width("−0000") + Board.TICK + 2 * Board.GAP;
        double room = board.layout().width() - gutter - Board.EDGE;
        double perMm = Math.min(room / (2 * halfSpanMm), board.layout().mostHeight() / Math.max(1, highMm - lowMm));
        Chord chord = board.view().chord();
        double ahead = chord == null ? 0 : new PlanChord(board, chord).roomAhead(lowMm, perMm);
        this.scale = new PlanScale(new Scale(top + Board.EDGE + ahead, lowMm, perMm), gutter + room / 2);
    }

    /** Draws it and gives the place below. */
    double draw() {
        ruler();
        new PlanSurfaces(board, plate, scale).draw();
        centreLine();
        parts();
        Chord chord = board.view().chord();
        if (chord != null) {
            new PlanChord(board, chord).draw(scale);
        }
        PlanBand band = PlanBand.of(board, scale, halfSpanMm);
        band.draw();
        double end = band.labels();
        cases();
        return Math.max(scale.x().at(highMm), end) + Board.EDGE;
    }

    private void ruler() {
        double line = gutter - Board.GAP - Board.TICK;
        double from = scale.x().at(lowMm);
        double to = scale.x().at(highMm);
        Ticks ticks = scale.x().ticks(from, to, 2 * board.layout().letters(), board.units());
        plate.line(new Spot(line + Board.TICK, from), new Spot(line + Board.TICK, to), Pen.RULER);
        for (double mark : ticks.marks()) {
            double at = scale.x().atMark(mark, board.units());
            plate.line(new Spot(line, at), new Spot(line + Board.TICK, at), Pen.RULER);
            plate.small(
                    new Spot(line - 3, at + 0.33 * board.layout().letters()),
                    Anchor.END,
                    Figures.number(mark, ticks.decimals()));
        }
    }

    /** From the foremost to the aftmost part: nobody entered a hull. */
    private void centreLine() {
        double from =
                board.view().placed().mapToDouble(PartMark::xMmOrZero).min().orElse(lowMm);
        double to = board.view().placed().mapToDouble(PartMark::xMmOrZero).max().orElse(highMm);
        plate.line(
                new Spot(scale.centre(), scale.x().at(from)),
                new Spot(scale.centre(), scale.x().at(to)),
                Pen.CENTRE);
    }

    private void parts() {
        double heaviest =
                board.view().placed().mapToDouble(PartMark::gramsOrZero).max().orElse(1);
        plate.open("plan-parts");
        board.view().placed().filter(part -> part.gramsOrZero() > 0).forEach(part -> {
            Double mirrored = part.mirroredAtYMm();
            double share = part.gramsOrZero() / heaviest / (mirrored == null ? 1 : 2);
            double radius = Math.max(0.8, LARGEST_PART * Math.sqrt(share));
            for (double yMm : mirrored == null ? new double[] {part.yMmOrZero()} : new double[] {-mirrored, mirrored}) {
                plate.circle(scale.spot(part.xMmOrZero(), yMm), radius, Pen.PLAN_PART);
            }
        });
        plate.close();
    }

    /** The design case last, so that it lies on top. */
    private void cases() {
        board.view().cases().stream().filter(one -> !one.design()).forEach(this::cg);
        board.view().cases().stream().filter(CaseView::design).forEach(this::cg);
    }

    private void cg(CaseView one) {
        CgView cg = one.basic();
        if (cg == null) {
            return;
        }
        Spot at = scale.spot(cg.xMm(), cg.yMm());
        plate.open("cg " + one.verdict(), "CG, " + one.name() + ": " + board.limit(cg.xMm()));
        plate.line(
                new Spot(at.x(), scale.x().at(cg.lowMm())),
                new Spot(at.x(), scale.x().at(cg.highMm())),
                Pen.BAR);
        if (one.design()) {
            plate.quartered(at, CG_RADIUS);
        } else {
            plate.circle(at, 2, one.flight() && one.isKnown() ? Pen.BASIC : Pen.PREDICTED);
        }
        plate.close();
    }
}
