package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.DemandView.Asked;
import dev.ledgerwing.report.drawing.DemandView.Cell;
import dev.ledgerwing.report.drawing.DemandView.Group;
import dev.ledgerwing.report.drawing.DemandView.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The grid with the states in words: in a box what must be selectable, plain what does no harm, a dot where nothing is asked. */
final class DemandCells {

    private static final double NAMES = 156;
    private static final double LEAST_COLUMN = 82;
    private static final double PAD = 5;
    private static final String NO_OTHER = "no other";

    private final DemandView view;
    private final Plate plate;
    private final double step;
    private final double column;

    DemandCells(DemandView view, Plate plate) {
        this.view = view;
        this.plate = plate;
        this.step = 1.3 * plate.letters().size();
        this.column = (plate.width() - 2 * Board.EDGE - NAMES)
                / Math.max(1, view.phases().size());
    }

    boolean haveRoom() {
        return column >= LEAST_COLUMN;
    }

    /** Draws and gives the place below. */
    double draw(double top) {
        double at = header(top);
        for (Group group : view.groups()) {
            plate.line(new Spot(Board.EDGE, at), new Spot(plate.width() - Board.EDGE, at), Pen.RULER);
            plate.open(group.quiet() ? "group dark" : "group");
            double start = DemandChart.heading(plate, group, at);
            at = start;
            for (int row = 0; row < group.rows().size(); row++) {
                if (row > 0) {
                    DemandChart.rule(plate, at);
                }
                at = row(group.rows().get(row), at);
            }
            DemandChart.together(plate, group, start + 2, at - 2);
            plate.close();
        }
        plate.line(new Spot(Board.EDGE, at), new Spot(plate.width() - Board.EDGE, at), Pen.RULER);
        return key(at + 4);
    }

    private double header(double top) {
        double bottom = top;
        for (int phase = 0; phase < view.phases().size(); phase++) {
            double at = top;
            for (String line : plate.smallLetters().wrapped(view.phases().get(phase), column - 2 * PAD, 3)) {
                at += step;
                plate.small(new Spot(left(phase) + PAD, at), Anchor.START, line);
            }
            bottom = Math.max(bottom, at);
        }
        return bottom + 6;
    }

    private double left(int phase) {
        return Board.EDGE + NAMES + phase * column;
    }

    private double row(Row row, double top) {
        plate.open("function", told(row));
        double bottom = top + 2;
        double base = top;
        for (String line : plate.letters().wrapped(row.name(), NAMES - 16, 3)) {
            base += step;
            plate.label(new Spot(Board.EDGE + 9, base), Anchor.START, line);
        }
        bottom = Math.max(bottom, base);
        for (int phase = 0; phase < row.cells().size(); phase++) {
            bottom = Math.max(bottom, cell(row, row.cells().get(phase), new Spot(left(phase) + PAD, top)));
        }
        plate.close();
        return bottom + 6;
    }

    private double cell(Row row, Cell cell, Spot corner) {
        if (cell.isOpen()) {
            plate.circle(corner.plus(3, 0.66 * step), 1.5, Pen.ARROW);
            return corner.y();
        }
        double at = corner.y() + 3;
        for (int state = 0; state < row.states().size(); state++) {
            Asked asked = cell.asked().get(state);
            if (asked == Asked.MUST) {
                at = boxed(row.states().get(state), corner.x(), at) + 3;
            } else if (asked == Asked.MAY) {
                at = plain(row.states().get(state), corner.x(), at);
            }
        }
        return cell.isLimited() ? plain(NO_OTHER, corner.x(), at) : at;
    }

    private double boxed(String state, double left, double top) {
        List<String> lines = plate.smallLetters().wrapped(state, room(), 2);
        double width = 2 * PAD
                + lines.stream().mapToDouble(plate.smallLetters()::width).max().orElse(0);
        double bottom = write(lines, new Spot(left + PAD, top + 1)) + 5;
        plate.polygon(
                List.of(
                        new Spot(left, top),
                        new Spot(left + width, top),
                        new Spot(left + width, bottom),
                        new Spot(left, bottom)),
                Pen.DEMAND);
        return bottom;
    }

    private double plain(String state, double left, double top) {
        return write(plate.smallLetters().wrapped(state, room(), 2), new Spot(left + PAD, top - 1)) + 3;
    }

    private double room() {
        return column - 4 * PAD;
    }

    /** Gives the last baseline. */
    private double write(List<String> lines, Spot corner) {
        double at = corner.y() - 2;
        for (String line : lines) {
            at += step - 2;
            plate.small(new Spot(corner.x(), at), Anchor.START, line);
        }
        return at;
    }

    private double key(double top) {
        double at = top + step;
        double left = Board.EDGE;
        plate.polygon(
                List.of(
                        new Spot(left, at - 9),
                        new Spot(left + 16, at - 9),
                        new Spot(left + 16, at + 1),
                        new Spot(left, at + 1)),
                Pen.DEMAND);
        left = text("must be selectable then", left + 22, at);
        left = text("no box: does no harm", left, at);
        left = text("no other: any other would", left, at);
        plate.circle(new Spot(left + 2, at - 4), 1.5, Pen.ARROW);
        text("nothing asked", left + 9, at);
        return at + 4;
    }

    private double text(String text, double left, double base) {
        plate.small(new Spot(left, base), Anchor.START, text);
        return left + plate.smallLetters().width(text) + 12;
    }

    private String told(Row row) {
        return row.name() + ": "
                + IntStream.range(0, row.cells().size())
                        .mapToObj(phase -> view.phases().get(phase) + " "
                                + told(row, row.cells().get(phase)))
                        .collect(Collectors.joining("; "));
    }

    /** What one phase asks, in words. */
    static String told(Row row, Cell cell) {
        if (cell.isOpen()) {
            return "asks nothing";
        }
        List<String> must = states(row, cell, Asked.MUST);
        List<String> may = states(row, cell, Asked.MAY);
        List<String> said = new ArrayList<>();
        if (!must.isEmpty()) {
            said.add("must select " + String.join(", ", must));
        }
        if (!may.isEmpty()) {
            said.add("may have " + String.join(", ", may));
        }
        if (cell.isLimited()) {
            said.add("never " + String.join(", ", states(row, cell, Asked.NEVER)));
        }
        return String.join(", ", said);
    }

    private static List<String> states(Row row, Cell cell, Asked asked) {
        return IntStream.range(0, row.states().size())
                .filter(state -> cell.asked().get(state) == asked)
                .mapToObj(state -> row.states().get(state))
                .toList();
    }
}
