package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.BalanceView.Chord;

/** The rulers below the enlarged band: stations, and per cents of the chord. Each gives the place below it. */
record BandRulers(Board board, Scale x, double left, double right) {

    private static final double APART = 46;

    double lengths(double top) {
        Ticks ticks = x.ticks(left, right, APART, board.units());
        board.plate().line(new Spot(left, top), new Spot(right, top), Pen.RULER);
        for (double mark : ticks.marks()) {
            tick(x.atMark(mark, board.units()), top, Figures.number(mark, ticks.decimals()));
        }
        return named(top, board.units().lengthUnit() + " from the datum");
    }

    double percents(double top) {
        Chord chord = board.view().chord();
        if (chord == null) {
            return top;
        }
        double least = APART / x.perMm() * 100 / chord.lengthMm();
        Ticks ticks = Ticks.between(chord.percent(x.mmAt(left)), chord.percent(x.mmAt(right)), least);
        board.plate().line(new Spot(left, top), new Spot(right, top), Pen.RULER);
        for (double mark : ticks.marks()) {
            tick(x.at(chord.xMm(mark)), top, Figures.number(mark, ticks.decimals()));
        }
        return named(top, "% of the MAC");
    }

    private void tick(double at, double top, String text) {
        board.plate().line(new Spot(at, top), new Spot(at, top + Board.TICK), Pen.RULER);
        double half = board.plate().smallLetters().width(text) / 2;
        double middle = board.isWide()
                ? at
                : Math.max(Board.EDGE + half, Math.min(at, board.plate().width() - Board.EDGE - half));
        board.plate().small(new Spot(middle, top + Board.TICK + board.lines() - 3), Anchor.MIDDLE, text);
    }

    /** What a ruler measures: beside it, or below where there is no room beside. Gives the place below. */
    private double named(double top, String name) {
        double base = top + Board.TICK + board.lines() - 3;
        if (board.isWide()) {
            board.plate().small(new Spot(right + 5 * Board.GAP, base), Anchor.START, name);
            return base + 2 * Board.GAP;
        }
        board.plate().small(new Spot(board.plate().width() - Board.EDGE, base + board.lines() - 2), Anchor.END, name);
        return base + board.lines() + Board.GAP;
    }
}
