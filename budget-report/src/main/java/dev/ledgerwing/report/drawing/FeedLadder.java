package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.ElementMark;
import dev.ledgerwing.report.drawing.PowerView.FeedMark;
import dev.ledgerwing.report.drawing.PowerView.RailMark;
import dev.ledgerwing.report.drawing.PowerView.SourceMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.Comparator;
import java.util.List;

/**
 * The same for a phone, and for a supply with too many layers to stand side by side: one below the other, sources first; at each rail
 * the feeds that lead to it, each with the name of what it comes from.
 */
final class FeedLadder {

    private static final double BUS = Board.EDGE + 4;
    private static final double TEXT = BUS + 14;
    private static final double LINE = BUS + 30;
    private static final double NAMES = LINE + 22;
    private static final double BAR_ROOM = 94;
    private static final double APART = 12;

    private final PowerView view;
    private final Plate plate;
    private final double right;
    private final double step;
    private final FeedLayers layers;

    FeedLadder(PowerView view, Plate plate) {
        this.view = view;
        this.plate = plate;
        this.right = plate.width() - Board.EDGE;
        this.step = 1.3 * plate.letters().size();
        this.layers = new FeedLayers(view);
    }

    /** Draws and gives the place below. */
    double draw(double top) {
        double at = top;
        for (SourceMark source : view.sources()) {
            at = node(NodeText.of(source, plate, right - TEXT), at, List.of());
        }
        List<RailMark> rails = view.rails().stream()
                .sorted(Comparator.comparingInt(rail -> layers.of(rail.code())))
                .toList();
        for (RailMark rail : rails) {
            at = node(NodeText.of(rail, plate, right - TEXT), at, view.to(rail.code()));
        }
        return at;
    }

    private double node(NodeText text, double top, List<FeedMark> feeds) {
        text.draw(new Spot(TEXT, top));
        double bottom = top + text.height();
        for (FeedMark feed : feeds) {
            bottom = feed(feed, bottom + 2);
        }
        boolean lit = text.state() == State.LIT;
        plate.line(new Spot(BUS, top), new Spot(BUS, bottom), lit ? Pen.BUS : Pen.BUS_DARK);
        if (!lit) {
            plate.hatch(new Box(BUS + 3, top, BUS + 9, bottom), 3.5);
        }
        return bottom + APART;
    }

    private double feed(FeedMark feed, double top) {
        boolean lit = feed.state() == State.LIT;
        Pen pen = lit ? Pen.FEED : Pen.FEED_DARK;
        plate.open(lit ? "feed" : "feed dark", feed.name());
        double base = top;
        String heading = feed.name() + ", from " + view.nameOf(feed.from())
                + (layers.isBackward(feed) ? ", a loop" : "") + (lit ? "" : ", dark");
        for (String line : plate.smallLetters().wrapped(heading, right - TEXT, 2)) {
            base += step;
            plate.small(new Spot(TEXT + 4, base), Anchor.START, line);
        }
        double start = base + 7;
        double at = start + 6;
        double end = at + feed.elements().size() * rowHeight() + 2;
        plate.circle(new Spot(LINE, start), 2.6, Pen.ARROW);
        plate.line(new Spot(LINE, start), new Spot(LINE, end), pen);
        plate.line(new Spot(LINE, end), new Spot(BUS + 2, end), pen);
        plate.fill(
                List.of(new Spot(BUS + 2, end), new Spot(BUS + 8, end - 3.5), new Spot(BUS + 8, end + 3.5)), Pen.ARROW);
        plate.close();
        for (ElementMark element : feed.elements()) {
            element(element, at);
            at += rowHeight();
        }
        return end + 4;
    }

    private double rowHeight() {
        return 2 * step + 6;
    }

    private void element(ElementMark element, double top) {
        plate.open(element.state() == State.DARK ? "element dark" : "element", ElementWords.told(element));
        new FeedSymbol(plate, new Spot(LINE, top + step - 6), element.state()).draw(element.kind());
        double bar = right - BAR_ROOM;
        double base = top + step - 2;
        for (String line : plate.smallLetters().wrapped(element.name(), bar - NAMES - 6, 2)) {
            plate.small(new Spot(NAMES, base), Anchor.START, line);
            base += step;
        }
        said(element, new Spot(bar, top + step - 2));
        plate.close();
    }

    private void said(ElementMark element, Spot base) {
        Verdict verdict = element.load().verdict();
        if (element.state() == State.DARK) {
            return; // nothing flows that could be judged
        }
        if (element.state() == State.FAILED) {
            plate.small(base, Anchor.START, "failed: " + element.failure());
        } else if (verdict == null) {
            plate.small(
                    base, Anchor.START, plate.smallLetters().cut(element.load().rating(), BAR_ROOM));
        } else if (element.load().percent() == null) {
            LoadBar.verdict(plate, base, verdict);
        } else {
            new LoadBar(plate, element.load()).draw(base.plus(0, -4));
            LoadBar.verdict(plate, base.plus(0, step), verdict);
        }
    }
}
