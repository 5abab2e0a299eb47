package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BanksView.BankMark;
import dev.ledgerwing.report.drawing.BanksView.LeadMark;
import dev.ledgerwing.report.drawing.BanksView.PinMark;
import java.util.List;

/** The outputs of a flight controller, bank by bank, and what hangs on each. An SVG element to stand in a page. */
public final class BanksChart {

    private static final double TALL = 1.35;
    private static final double APART = 20;

    private final BanksView view;
    private final Plate plate;
    private final double step;
    private final int columns;
    private final double width;

    private BanksChart(BanksView view, Layout layout) {
        this.view = view;
        this.plate = new Plate(layout);
        this.step = 1.3 * layout.letters();
        this.columns = layout.isWide() ? 2 : 1;
        this.width = (layout.width() - 2 * Board.EDGE - (columns - 1) * APART) / columns;
    }

    public static String svg(BanksView view, Layout layout) {
        return draw(view, layout).svg();
    }

    static Drawn draw(BanksView view, Layout layout) {
        return new BanksChart(view, layout).draw();
    }

    private Drawn draw() {
        double at = Board.EDGE / 2;
        for (String sentence : view.sentences()) {
            for (String line : plate.letters().wrapped(sentence, plate.width() - 2 * Board.EDGE, 4)) {
                at += step;
                plate.label(new Spot(Board.EDGE, at), Anchor.START, line);
            }
        }
        at += Board.EDGE;
        for (int first = 0; first < view.banks().size(); first += columns) {
            double bottom = at;
            for (int place = 0; place < columns && first + place < view.banks().size(); place++) {
                Spot corner = new Spot(Board.EDGE + place * (width + APART), at);
                bottom = Math.max(bottom, bank(view.banks().get(first + place), corner));
            }
            at = bottom + 12;
        }
        at = loose(at);
        String css = at > TALL * plate.width() ? "banks tall" : "banks";
        return plate.finish(css, view.airframe() + ": outputs and what hangs on them", at + Board.EDGE);
    }

    private double bank(BankMark bank, Spot corner) {
        plate.open("bank", bank.name() + ": " + String.join(", ", bank.facts()));
        double base = corner.y() + step;
        double right = width - 12;
        if (bank.verdict() != null) {
            double mark = LoadBar.width(plate, bank.verdict());
            LoadBar.verdict(plate, new Spot(corner.x() + width - mark - 6, base), bank.verdict());
            right -= mark + 8;
        }
        plate.label(
                new Spot(corner.x() + 6, base), Anchor.START, plate.letters().cut(bank.name(), right));
        for (String fact : bank.facts()) {
            for (String line : plate.smallLetters().wrapped(fact, width - 12, 2)) {
                base += step;
                plate.small(new Spot(corner.x() + 6, base), Anchor.START, line);
            }
        }
        base += 6;
        for (PinMark pin : bank.pins()) {
            base = pin(pin, new Spot(corner.x(), base));
        }
        outline(corner, base + 2);
        plate.close();
        return base + 2;
    }

    private void outline(Spot corner, double bottom) {
        plate.polygon(
                List.of(
                        corner,
                        corner.plus(width, 0),
                        new Spot(corner.x() + width, bottom),
                        new Spot(corner.x(), bottom)),
                Pen.BLOCK);
    }

    private double pin(PinMark pin, Spot left) {
        return new PinSketch(plate, width).draw(pin, left);
    }

    private double loose(double top) {
        double at = top;
        if (view.loose().isEmpty()) {
            return at;
        }
        at += step;
        plate.label(new Spot(Board.EDGE, at), Anchor.START, "On no output of this board");
        for (LeadMark lead : view.loose()) {
            at = new PinSketch(plate, plate.width() - 2 * Board.EDGE).loose(lead, new Spot(Board.EDGE, at + 2));
        }
        return at;
    }
}
