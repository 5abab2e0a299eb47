package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * The masses of the design load case along the fuselage, nose to the left: circles on a beam, each over its own station, areas in
 * proportion to masses; below the beam the allowed band and a wedge where it balances. What cannot be drawn is named.
 */
public final class MassStrip {

    private static final double EDGE = 8;
    private static final double TICK = 5;
    private static final double BAND_DEPTH = 8;
    private static final double WEDGE = 16;
    private static final int MOST_DRAWN = 300;
    private static final double LARGEST_SHARE = 0.042;
    private static final double SMALLER = 0.93;
    private static final double LEAST_SHARE = 0.3;
    private static final double ROOM_FOR_A_NUMBER = 9;

    private final Board board;
    private final Plate plate;
    private final BalanceView view;
    private final Figures units;
    private final Layout layout;
    private final double lines;
    private final List<PartMark> drawn;
    private final List<Load> loads;
    private final Scale x;

    private MassStrip(BalanceView view, Figures units, Layout layout) {
        this.plate = new Plate(layout);
        this.board = new Board(plate, view, null, units, layout);
        this.view = view;
        this.units = units;
        this.layout = layout;
        this.lines = board.lines();
        this.drawn = view.placed()
                .filter(part -> part.gramsOrZero() > 0)
                .sorted(Comparator.comparingDouble(PartMark::gramsOrZero).reversed())
                .limit(MOST_DRAWN)
                .toList();
        double largest = LARGEST_SHARE * layout.width();
        double low = Math.min(
                0, drawn.stream().mapToDouble(PartMark::xMmOrZero).min().orElse(0));
        double high = Math.max(
                low + 100, drawn.stream().mapToDouble(PartMark::xMmOrZero).max().orElse(100));
        double room = layout.width() - 2 * (EDGE + largest);
        this.x = new Scale(EDGE + largest, low, room / (high - low));
        this.loads = heap(largest);
    }

    /** As large as they can be without becoming a tower. */
    private List<Load> heap(double largest) {
        for (double radius = largest; ; radius *= SMALLER) {
            List<Load> heap = Stack.of(drawn, x, radius);
            double height = heap.stream()
                    .mapToDouble(load -> load.radius() - load.centre().y())
                    .max()
                    .orElse(0);
            if (height <= layout.heap() || radius < largest * LEAST_SHARE) {
                return heap;
            }
        }
    }

    /** An SVG element to stand in a page. */
    public static String svg(BalanceView view, Figures units, Layout layout) {
        return draw(view, units, layout).svg();
    }

    static Drawn draw(BalanceView view, Figures units, Layout layout) {
        return new MassStrip(view, units, layout).draw();
    }

    private Drawn draw() {
        double highest = loads.stream()
                .mapToDouble(load -> load.centre().y() - load.radius())
                .min()
                .orElse(0);
        double beam = EDGE - highest;
        plate.line(new Spot(EDGE, beam), new Spot(layout.width() - EDGE, beam), Pen.BEAM);
        int numbered = circles(beam);
        wedge(beam);
        double stations = beam + WEDGE + BAND_DEPTH + 3;
        band(stations - BAND_DEPTH);
        StripNotes notes = new StripNotes(board, loads.stream().map(Load::part).toList());
        double below = notes.missing(notes.key(notes.list(ruler(stations), numbered)));
        return plate.finish("strip", view.airframe() + ": masses along the stations", below + EDGE);
    }

    private void band(double top) {
        BandView band = view.band();
        if (band != null) {
            Box box = new Box(x.at(band.forwardXMm()), top, x.at(band.aftXMm()), top + BAND_DEPTH);
            String estimate = band.estimated() ? ", estimate" : "";
            plate.open(
                    "band", "Allowed band, " + length(band.forwardXMm()) + " to " + length(band.aftXMm()) + estimate);
            plate.area(box, Pen.BAND);
            plate.hatch(box, 4);
            plate.line(new Spot(box.left(), top), new Spot(box.left(), box.bottom()), Pen.EDGE);
            plate.line(new Spot(box.right(), top), new Spot(box.right(), box.bottom()), Pen.EDGE);
            plate.close();
        }
    }

    /** Draws the parts and gives how many of them have a number. */
    private int circles(double beam) {
        int most = layout.isWide() ? 12 : 8;
        int number = 0;
        for (Load load : loads) {
            Spot centre = load.centre().plus(0, beam);
            plate.open("part", told(load.part()));
            plate.circle(centre, load.radius(), load.part().pen());
            if (number < most && load.radius() >= ROOM_FOR_A_NUMBER) {
                number++;
                plate.small(centre.plus(0, 0.31 * layout.letters()), Anchor.MIDDLE, Integer.toString(number));
            }
            plate.close();
        }
        return number;
    }

    private String told(PartMark part) {
        return part.name() + ", " + units.mass(Objects.requireNonNull(part.mass())) + " at " + length(part.xMmOrZero());
    }

    private String length(double mm) {
        return units.length(Length.ofMm(mm));
    }

    private void wedge(double beam) {
        view.cases().stream().filter(CaseView::design).forEach(design -> {
            CgView cg = design.basic();
            if (cg != null) {
                wedge(
                        new Spot(x.at(cg.xMm()), beam + 1),
                        (design.isKnown() ? "CG " : "CG of the rest ") + length(cg.xMm()));
            }
        });
    }

    private void wedge(Spot tip, String text) {
        plate.open("wedge", text + ", basic mass, design load case");
        plate.polygon(List.of(tip, tip.plus(9, WEDGE), tip.plus(-9, WEDGE)), Pen.BASIC);
        plate.label(label(tip, text), Anchor.START, text);
        plate.close();
    }

    /** Right of the wedge, or left of it where the drawing ends. */
    private Spot label(Spot tip, String text) {
        double width = plate.letters().width(text);
        boolean fits = tip.x() + 14 + width < layout.width() - EDGE;
        return tip.plus(fits ? 14 : -14 - width, WEDGE - 2);
    }

    private double ruler(double at) {
        Ticks ticks = x.ticks(EDGE, layout.width() - EDGE - 12, 46, units);
        plate.line(new Spot(EDGE, at), new Spot(layout.width() - EDGE, at), Pen.RULER);
        for (double mark : ticks.marks()) {
            double place = x.atMark(mark, units);
            plate.line(new Spot(place, at), new Spot(place, at + TICK), Pen.RULER);
            if (place > EDGE + 14) {
                plate.small(
                        new Spot(place, at + TICK + lines - 3), Anchor.MIDDLE, Figures.number(mark, ticks.decimals()));
            }
        }
        return at + TICK + lines;
    }
}
