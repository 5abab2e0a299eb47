package dev.ledgerwing.report.drawing;

import static dev.ledgerwing.report.drawing.CaseMarks.CAP;
import static dev.ledgerwing.report.drawing.CaseMarks.MARK;

/** What the marks of the enlarged band mean: in one line, or in three on a phone. */
record MarkKey(Board board) {

    private static final double BAR = 20;

    /** Draws from {@code top} on and gives the place below. */
    double draw(double top) {
        Spot at = masses(new Spot(Board.EDGE, top + board.lines()));
        at = uncertainty(nextLine(at));
        if (board.view().hasPlan()) {
            at = nextLine(at);
            board.plate().quartered(middle(at).plus(MARK, 0), MARK + 1);
            text(at.plus(MARK + 2 * Board.GAP, 0), "CG in the design load case");
        }
        return at.y() + 2 * Board.GAP;
    }

    private Spot masses(Spot start) {
        Spot at = start.plus(MARK, 0);
        board.plate().circle(middle(at), MARK, Pen.BASIC);
        at = text(at.plus(2 * Board.GAP, 0), "basic mass");
        board.plate().circle(middle(at), MARK, Pen.PREDICTED);
        at = text(at.plus(2 * Board.GAP, 0), "predicted mass");
        if (board.before() == null) {
            return at;
        }
        board.plate().circle(middle(at), MARK - 1, Pen.BEFORE);
        return text(at.plus(2 * Board.GAP, 0), "before");
    }

    private Spot uncertainty(Spot at) {
        Spot from = middle(at);
        board.plate().line(from, from.plus(BAR, 0), Pen.BAR);
        board.plate().line(from.plus(0, -CAP), from.plus(0, CAP), Pen.BAR);
        board.plate().line(from.plus(BAR, -CAP), from.plus(BAR, CAP), Pen.BAR);
        return text(at.plus(BAR + Board.GAP, 0), "± two standard uncertainties");
    }

    /** On a phone the line below, else where one is. */
    private Spot nextLine(Spot at) {
        return board.isWide() ? at : new Spot(Board.EDGE, at.y() + board.lines());
    }

    /** The height of a mark beside text on the baseline of {@code at}. */
    private Spot middle(Spot at) {
        return at.plus(0, -0.3 * board.layout().letters());
    }

    private Spot text(Spot at, String text) {
        board.plate().small(at, Anchor.START, text);
        return at.plus(board.plate().smallLetters().width(text) + 3 * Board.GAP, 0);
    }
}
