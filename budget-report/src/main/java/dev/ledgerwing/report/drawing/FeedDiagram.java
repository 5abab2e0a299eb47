package dev.ledgerwing.report.drawing;

import java.util.List;
import java.util.stream.Stream;

/**
 * How current comes from the sources to the rails, each thing on the way with its demand against its rating. An SVG element to stand in
 * a page. Draws what is there of an incomplete supply too.
 */
public final class FeedDiagram {

    /** Taller than this many times its width it is made narrower on paper, to stay on one page. */
    private static final double TALL = 1.35;

    private FeedDiagram() {}

    public static String svg(PowerView view, Layout layout) {
        return draw(view, layout).svg();
    }

    static Drawn draw(PowerView view, Layout layout) {
        Plate plate = new Plate(layout);
        double at = sentences(view, plate);
        Double below = layout.isWide() ? FeedChart.draw(view, plate, at) : null;
        double bottom = below == null ? new FeedLadder(view, plate).draw(at) : below;
        boolean tall = bottom > TALL * layout.width();
        return plate.finish(tall ? "feeds tall" : "feeds", name(view), bottom + Board.EDGE);
    }

    private static double sentences(PowerView view, Plate plate) {
        double step = 1.3 * plate.letters().size();
        double at = Board.EDGE / 2;
        Stream<String> said = Stream.concat(Stream.of(view.failure()), notes(view));
        for (String sentence : said.filter(text -> !text.isEmpty()).toList()) {
            List<String> lines = plate.letters().wrapped(sentence, plate.width() - 2 * Board.EDGE, 6);
            for (String line : lines) {
                at += step;
                plate.label(new Spot(Board.EDGE, at), Anchor.START, line);
            }
        }
        return at + Board.EDGE;
    }

    private static Stream<String> notes(PowerView view) {
        return view.isEmpty() ? Stream.of("No source, no rail and no feed is recorded yet.") : view.notes().stream();
    }

    private static String name(PowerView view) {
        return view.airframe() + ": feeds from the sources to the rails"
                + (view.failure().isEmpty() ? "" : "; " + view.failure());
    }
}
