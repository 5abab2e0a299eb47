package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.DemandView.Asked;
import dev.ledgerwing.report.drawing.DemandView.Group;
import dev.ledgerwing.report.drawing.DemandView.Row;
import java.util.List;

/** The grid with a row for each state and a mark for each phase, for a phone and for very many phases. */
final class DemandMarks {

    private static final double LEAST_COLUMN = 19;
    private static final double MOST_COLUMN = 34;
    private static final double HALF = 4.5;

    private final DemandView view;
    private final Plate plate;
    private final double step;
    private final double column;
    private final int columns;
    private final double names;

    DemandMarks(DemandView view, Plate plate) {
        this.view = view;
        this.plate = plate;
        this.step = 1.3 * plate.letters().size();
        double room = plate.width() - 2 * Board.EDGE;
        double least = 0.36 * room;
        this.columns = (int) Math.min(view.phases().size(), Math.floor((room - least) / LEAST_COLUMN));
        this.column = Math.min(MOST_COLUMN, (room - least) / columns);
        this.names = room - columns * column;
    }

    /** Draws and gives the place below. */
    double draw(double top) {
        double at = phases(top);
        for (int first = 0; first < view.phases().size(); first += columns) {
            at = band(first, Math.min(first + columns, view.phases().size()), at + 4);
        }
        return key(at);
    }

    /** Which phase each number is. */
    private double phases(double top) {
        int beside = plate.width() > 500 ? 3 : 2;
        double room = (plate.width() - 2 * Board.EDGE) / beside;
        double base = top;
        for (int phase = 0; phase < view.phases().size(); phase++) {
            base = top + step * (phase / beside + 1);
            String words = (phase + 1) + "  " + view.phases().get(phase);
            plate.small(
                    new Spot(Board.EDGE + phase % beside * room, base),
                    Anchor.START,
                    plate.smallLetters().cut(words, room - 8));
        }
        return base;
    }

    private double band(int first, int end, double top) {
        double at = top + step;
        for (int phase = first; phase < end; phase++) {
            plate.small(new Spot(middle(phase - first), at), Anchor.MIDDLE, String.valueOf(phase + 1));
        }
        at += 5;
        for (Group group : view.groups()) {
            plate.line(new Spot(Board.EDGE, at), new Spot(plate.width() - Board.EDGE, at), Pen.RULER);
            plate.open(group.quiet() ? "group dark" : "group");
            double start = DemandChart.heading(plate, group, at);
            at = start;
            for (Row row : group.rows()) {
                at = row(row, first, end, at);
            }
            DemandChart.together(plate, group, start + 2, at - 2);
            plate.close();
        }
        plate.line(new Spot(Board.EDGE, at), new Spot(plate.width() - Board.EDGE, at), Pen.RULER);
        return at + 4;
    }

    private double middle(int place) {
        return Board.EDGE + names + (place + 0.5) * column;
    }

    private double row(Row row, int first, int end, double top) {
        plate.open("function");
        double base = top;
        for (String line : plate.letters().wrapped(row.name(), plate.width() - 2 * Board.EDGE - 12, 2)) {
            base += step;
            plate.label(new Spot(Board.EDGE + 9, base), Anchor.START, line);
        }
        for (int state = 0; state < row.states().size(); state++) {
            base += step;
            plate.small(
                    new Spot(Board.EDGE + 20, base),
                    Anchor.START,
                    plate.smallLetters().cut(row.states().get(state), names - 26));
            for (int phase = first; phase < end; phase++) {
                mark(
                        new Spot(middle(phase - first), base - 4),
                        row.cells().get(phase).asked().get(state));
            }
        }
        plate.close();
        return base + 6;
    }

    private void mark(Spot centre, Asked asked) {
        switch (asked) {
            case MUST ->
                plate.polygon(
                        List.of(
                                centre.plus(-HALF, -HALF),
                                centre.plus(HALF, -HALF),
                                centre.plus(HALF, HALF),
                                centre.plus(-HALF, HALF)),
                        Pen.KNOB);
            case MAY -> plate.circle(centre, HALF - 1, Pen.STOP);
            case NEVER -> {
                plate.line(centre.plus(-3.2, -3.2), centre.plus(3.2, 3.2), Pen.TRACK);
                plate.line(centre.plus(-3.2, 3.2), centre.plus(3.2, -3.2), Pen.TRACK);
            }
            case OPEN -> plate.circle(centre, 1.2, Pen.ARROW);
        }
    }

    private double key(double top) {
        double at = top;
        for (Asked asked : Asked.values()) {
            at += step;
            mark(new Spot(Board.EDGE + HALF + 1, at - 4), asked);
            plate.small(new Spot(Board.EDGE + 18, at), Anchor.START, words(asked));
        }
        return at + 4;
    }

    private static String words(Asked asked) {
        return switch (asked) {
            case MUST -> "must be selectable then";
            case MAY -> "does no harm then";
            case NEVER -> "must not be then";
            case OPEN -> "nothing asked";
        };
    }
}
