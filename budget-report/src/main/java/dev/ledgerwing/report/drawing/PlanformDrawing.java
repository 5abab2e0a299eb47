package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import org.jspecify.annotations.Nullable;

/**
 * The airframe from above with its mean chord, band and centres of gravity, and below that the band enlarged with a row for each
 * load case. Both axes of the upper part have one scale; so has the lower one along its only axis. An SVG element to stand in a page.
 */
public final class PlanformDrawing {

    private static final double BETWEEN = 14;

    private PlanformDrawing() {}

    /** One build. */
    public static String svg(BalanceView view, Figures units, Layout layout) {
        return draw(null, view, units, layout).svg();
    }

    /** What a change would do: the same drawing of {@code after}, with marks of {@code before} and arrows from these. */
    public static String svg(BalanceView before, BalanceView after, Figures units, Layout layout) {
        return draw(before, after, units, layout).svg();
    }

    static Drawn draw(@Nullable BalanceView before, BalanceView view, Figures units, Layout layout) {
        Plate plate = new Plate(layout);
        Board board = new Board(plate, view, before, units, layout);
        double at = 0;
        if (view.hasPlan()) {
            at = new PlanSketch(board, at).draw() + BETWEEN;
        }
        at = new BandDetail(board).draw(at);
        return plate.finish("planform", name(view), at);
    }

    private static String name(BalanceView view) {
        return view.airframe()
                + (view.hasPlan() ? " from above, and the band enlarged" : ": the band and the centres of gravity");
    }
}
