package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.Chord;
import dev.ledgerwing.report.drawing.BalanceView.PlanPanel;
import dev.ledgerwing.report.drawing.BalanceView.PlanPoint;
import java.util.ArrayList;
import java.util.List;

/**
 * The allowed band and the neutral point across the airframe from above, their labels behind the wing on the right.
 *
 * @param half how far the band reaches to each side: from chord to chord, or a little without a wing
 */
record PlanBand(Board board, PlanScale scale, double half) {

    private static final double APART = 2 * Board.GAP;

    static PlanBand of(Board board, PlanScale scale, double halfSpanMm) {
        Chord chord = board.view().chord();
        return new PlanBand(
                board,
                scale,
                (chord == null ? halfSpanMm / 3 : chord.yMm()) * scale.x().perMm());
    }

    void draw() {
        BandView old = board.oldBand();
        if (old != null) {
            edge(scale.x().at(old.forwardXMm()), Pen.EDGE_BEFORE);
            edge(scale.x().at(old.aftXMm()), Pen.EDGE_BEFORE);
        }
        BandView band = board.view().band();
        if (band != null) {
            draw(band);
        }
    }

    private void draw(BandView band) {
        double front = scale.x().at(band.forwardXMm());
        Box box = new Box(
                scale.centre() - half, front, scale.centre() + half, scale.x().at(band.aftXMm()));
        String name = "Allowed band, " + board.limit(band.forwardXMm()) + " to " + board.limit(band.aftXMm());
        board.plate().open("band", name);
        board.plate().area(box, Pen.BAND);
        board.plate().hatch(box, 5);
        edge(box.top(), Pen.EDGE);
        edge(box.bottom(), Pen.EDGE);
        board.plate().close();
    }

    private void edge(double at, Pen pen) {
        board.plate().line(new Spot(scale.centre() - half, at), new Spot(scale.centre() + half, at), pen);
    }

    // Labels

    /** A label behind the wing, led to from {@code xMm}. */
    private record Led(String text, double xMm, boolean isNeutralPoint) {}

    private List<Led> led() {
        List<Led> led = new ArrayList<>();
        BandView band = board.view().band();
        if (band != null) {
            String estimate = band.estimated() ? ", estimate" : "";
            led.add(new Led("forward limit " + board.limit(band.forwardXMm()) + estimate, band.forwardXMm(), false));
            led.add(new Led("aft limit " + board.limit(band.aftXMm()) + estimate, band.aftXMm(), false));
        }
        Double neutral = board.view().neutralPointXMm();
        if (neutral != null) {
            led.add(new Led("neutral point " + board.ofMac(neutral) + ", estimate", neutral, true));
        }
        return led;
    }

    /** Draws them and gives the place below; on a phone the part below says it all. */
    double labels() {
        List<Led> led = led();
        double across = scale.centre() + 0.3 * half;
        if (!board.isWide()) {
            led.stream().filter(Led::isNeutralPoint).forEach(one -> neutralPoint(one, across));
            return 0;
        }
        double longest = led.stream()
                .mapToDouble(one -> board.plate().letters().width(one.text()))
                .max()
                .orElse(0);
        double rightmost = board.layout().width() - Board.EDGE - longest - led.size() * APART;
        double first = Math.max(scale.centre() + APART, Math.min(across, rightmost));
        return labels(led, new Box(first - 2, 0, first + longest + led.size() * APART, led.size() * board.lines()));
    }

    /** Each leader ends above the labels of those left of it. */
    private double labels(List<Led> led, Box room) {
        double top = scale.x().at(aftmostMm(room)) + 1.5 * Board.GAP + board.lines();
        for (int row = 0; row < led.size(); row++) {
            double across = room.left() + 2 + row * APART;
            draw(led.get(row), across, top + (led.size() - 1 - row) * board.lines());
        }
        return top + room.height();
    }

    private void draw(Led led, double across, double baseline) {
        Spot from = new Spot(across, scale.x().at(led.xMm()));
        Spot knee = new Spot(across, baseline - 0.3 * board.layout().letters());
        board.plate().line(from, knee, Pen.LEADER);
        board.plate().line(knee, knee.plus(5, 0), Pen.LEADER);
        if (led.isNeutralPoint()) {
            neutralPoint(led, across);
        } else {
            board.plate().circle(from, 1.7, Pen.ARROW);
        }
        board.plate().label(new Spot(across + 8, baseline), Anchor.START, led.text());
    }

    private void neutralPoint(Led led, double across) {
        board.plate().open("neutral-point", led.text());
        board.plate().diamond(new Spot(across, scale.x().at(led.xMm())), 4.5, Pen.NEUTRAL);
        board.plate().close();
    }

    /** Behind the wing where the labels stand; behind the tail too where that would be in the way. */
    private double aftmostMm(Box room) {
        double behindWing = aftmostMm(board.view().wing(), room);
        double tailFront = board.view().tail().stream()
                .flatMap(panel -> panel.corners().stream())
                .mapToDouble(PlanPoint::xMm)
                .min()
                .orElse(Double.MAX_VALUE);
        double needed = (room.height() + 5 * Board.GAP) / scale.x().perMm();
        return behindWing + needed < tailFront
                ? behindWing
                : Math.max(behindWing, aftmostMm(board.view().tail(), room));
    }

    private double aftmostMm(List<PlanPanel> panels, Box room) {
        double from = scale.yMm(room.left());
        double to = scale.yMm(room.right());
        return panels.stream()
                .filter(panel -> panel.corners().stream().anyMatch(corner -> corner.yMm() > from)
                        && panel.corners().stream().anyMatch(corner -> corner.yMm() < to))
                .flatMap(panel -> panel.corners().stream())
                .mapToDouble(PlanPoint::xMm)
                .max()
                .orElse(scale.x().lowMm());
    }
}
