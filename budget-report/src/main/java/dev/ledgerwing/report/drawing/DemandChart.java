package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.DemandView.Group;
import java.util.List;

/**
 * What each phase asks of each switched function. An SVG element to stand in a page: with the states in words where the phases have
 * room beside each other, else with a mark for each state.
 */
public final class DemandChart {

    private static final double TALL = 1.35;

    private DemandChart() {}

    public static String svg(DemandView view, Layout layout) {
        return draw(view, layout).svg();
    }

    static Drawn draw(DemandView view, Layout layout) {
        Plate plate = new Plate(layout);
        double at = Board.EDGE / 2;
        if (!view.isEmpty()) {
            DemandCells cells = new DemandCells(view, plate);
            at = layout.isWide() && cells.haveRoom() ? cells.draw(at) : new DemandMarks(view, plate).draw(at);
        }
        for (String note : view.notes()) {
            at = sentence(plate, note, at);
        }
        String css = at > TALL * layout.width() ? "demands tall" : "demands";
        return plate.finish(css, view.airframe() + ": what each phase asks of each function", at + Board.EDGE);
    }

    private static double sentence(Plate plate, String note, double top) {
        double at = top;
        List<String> lines = plate.smallLetters().wrapped(note, plate.width() - 2 * Board.EDGE, 6);
        for (String line : lines) {
            at += 1.3 * plate.letters().size();
            plate.small(new Spot(Board.EDGE, at), Anchor.START, line);
        }
        return at;
    }

    /** The heading over functions of one channel; gives the place below. */
    static double heading(Plate plate, Group group, double top) {
        if (group.heading().isEmpty()) {
            return top;
        }
        double step = 1.3 * plate.letters().size();
        plate.small(
                new Spot(Board.EDGE, top + step),
                Anchor.START,
                plate.smallLetters().cut(group.heading(), plate.width() - 2 * Board.EDGE));
        return top + step + 4;
    }

    /** A line across, quiet. */
    static void rule(Plate plate, double at) {
        plate.line(new Spot(Board.EDGE, at), new Spot(plate.width() - Board.EDGE, at), Pen.RULE);
    }

    /** The stroke beside functions that share a channel. */
    static void together(Plate plate, Group group, double top, double bottom) {
        if (group.rows().size() > 1 && !group.heading().isEmpty() && !group.quiet()) {
            plate.line(new Spot(Board.EDGE + 2, top), new Spot(Board.EDGE + 2, bottom), Pen.BUS);
        }
    }
}
