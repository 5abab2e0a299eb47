package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.TransmitterView.ControlMark;

/**
 * What each control of a transmitter commands: a drawing of our own, no front panel of any maker. An SVG element to stand in a page.
 */
public final class TransmitterChart {

    private static final double TALL = 1.35;
    private static final double APART = 16;
    private static final int WIDE_COLUMNS = 3;

    private TransmitterChart() {}

    public static String svg(TransmitterView view, Layout layout) {
        return draw(view, layout).svg();
    }

    static Drawn draw(TransmitterView view, Layout layout) {
        Plate plate = new Plate(layout);
        double at = Board.EDGE / 2;
        for (String sentence : view.sentences()) {
            for (String line : plate.letters().wrapped(sentence, plate.width() - 2 * Board.EDGE, 6)) {
                at += 1.3 * plate.letters().size();
                plate.label(new Spot(Board.EDGE, at), Anchor.START, line);
            }
        }
        at = controls(view, plate, layout.isWide() ? WIDE_COLUMNS : 1, at + APART / 2);
        String css = at > TALL * layout.width() ? "transmitter tall" : "transmitter";
        return plate.finish(css, view.airframe() + ": what the transmitter’s controls command", at + Board.EDGE);
    }

    private static double controls(TransmitterView view, Plate plate, int columns, double top) {
        double width = (plate.width() - 2 * Board.EDGE - (columns - 1) * APART) / columns;
        double at = top;
        for (int first = 0; first < view.controls().size(); first += columns) {
            DemandChart.rule(plate, at);
            double bottom = at;
            for (int place = 0;
                    place < columns && first + place < view.controls().size();
                    place++) {
                ControlMark control = view.controls().get(first + place);
                Spot corner = new Spot(Board.EDGE + place * (width + APART), at + 6);
                bottom = Math.max(bottom, new ControlSketch(plate, control, width).draw(corner));
            }
            at = bottom + 6;
        }
        return at;
    }
}
