package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.Chord;
import dev.ledgerwing.report.drawing.BalanceView.PlanPoint;
import java.util.List;

/** The mean aerodynamic chord on both sides, its label ahead of the wing on the right. */
record PlanChord(Board board, Chord chord) {

    /** Room for the label ahead of the foremost station, with {@code perMm} as the scale. */
    double roomAhead(double lowMm, double perMm) {
        double needed = text().size() * board.lines() + 3 * Board.GAP;
        return Math.max(0, needed - (foremostMm(perMm) - lowMm) * perMm);
    }

    /** The foremost station drawn where the label stands. */
    private double foremostMm(double perMm) {
        double half = board.plate().letters().width("000 mm from the centre line") / 2 / perMm;
        return board.views()
                .flatMap(BalanceView::corners)
                .filter(corner -> corner.yMm() > Math.max(0, chord.yMm() - half) - 1)
                .mapToDouble(PlanPoint::xMm)
                .min()
                .orElse(0);
    }

    private List<String> text() {
        String length = "MAC " + board.length(chord.lengthMm());
        return board.isWide() ? List.of(length + ", " + from(), where()) : List.of(length);
    }

    private String from() {
        return "from " + board.length(chord.leadingEdgeXMm());
    }

    private String where() {
        return board.length(chord.yMm()) + " from the centre line";
    }

    void draw(PlanScale scale) {
        String name = "Mean aerodynamic chord, " + board.length(chord.lengthMm()) + " long, " + from() + ", " + where();
        board.plate().open("chord", name);
        for (double side : chord.mirrored() ? new double[] {-1, 1} : new double[] {1}) {
            Spot front = scale.spot(chord.leadingEdgeXMm(), side * chord.yMm());
            board.plate().line(front, front.plus(0, chord.lengthMm() * scale.x().perMm()), Pen.CHORD);
        }
        label(scale);
        board.plate().close();
    }

    private void label(PlanScale scale) {
        Spot edge = scale.spot(chord.leadingEdgeXMm(), chord.yMm());
        double bottom = scale.x().at(foremostMm(scale.x().perMm())) - 2 * Board.GAP;
        board.plate().line(edge, new Spot(edge.x(), bottom + 2), Pen.LEADER);
        List<String> text = text();
        double half =
                text.stream().mapToDouble(board.plate().letters()::width).max().orElse(0) / 2;
        double rightmost = board.layout().width() - Board.EDGE - half;
        double middle = Math.min(Math.max(edge.x(), scale.centre() + Board.GAP + half), rightmost);
        for (int line = 0; line < text.size(); line++) {
            Spot at = new Spot(middle, bottom - 4 - (text.size() - 1 - line) * board.lines());
            board.plate().label(at, Anchor.MIDDLE, text.get(line));
        }
    }
}
