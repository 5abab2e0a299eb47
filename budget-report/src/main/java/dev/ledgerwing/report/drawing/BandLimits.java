package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.BandView;
import java.util.List;
import java.util.stream.Stream;

/** The allowed band of the enlarged part, and above it what its limits are: outward of their edges and so clear of both. */
record BandLimits(Board board, Scale x) {

    double height() {
        BandView band = board.view().band();
        return band == null ? Board.GAP : text("", 0, band).size() * board.lines() + Board.GAP;
    }

    /** Room that the texts need outward of a limit. */
    static double room(Plate plate) {
        return plate.letters().width("000.0 % MAC") + 5;
    }

    /** Texts from {@code top} on, leaders down to {@code plot}. */
    void labels(double top, double plot) {
        BandView band = board.view().band();
        if (band != null) {
            String limit = board.isWide() ? " limit" : "";
            Spot forward = new Spot(x.at(band.forwardXMm()), top);
            Spot aft = new Spot(x.at(band.aftXMm()), top);
            label(forward.plus(-5, 0), Anchor.END, text("forward" + limit, band.forwardXMm(), band));
            label(aft.plus(5, 0), Anchor.START, text("aft" + limit, band.aftXMm(), band));
            upright(band.forwardXMm(), top + 4, plot, Pen.LEADER);
            upright(band.aftXMm(), top + 4, plot, Pen.LEADER);
        }
    }

    private List<String> text(String name, double xMm, BandView band) {
        return Stream.of(
                        name,
                        band.estimated() ? "estimate" : null,
                        board.view().chord() == null ? null : board.ofMac(xMm),
                        board.length(xMm))
                .flatMap(Stream::ofNullable)
                .toList();
    }

    private void label(Spot top, Anchor anchor, List<String> text) {
        for (int line = 0; line < text.size(); line++) {
            board.plate().label(top.plus(0, (line + 1) * board.lines() - 1), anchor, text.get(line));
        }
    }

    /** The band from {@code top} to {@code bottom}, and dashed where it was before a change. */
    void band(double top, double bottom) {
        BandView old = board.oldBand();
        if (old != null) {
            upright(old.forwardXMm(), top, bottom, Pen.EDGE_BEFORE);
            upright(old.aftXMm(), top, bottom, Pen.EDGE_BEFORE);
        }
        BandView band = board.view().band();
        if (band != null) {
            Box box = new Box(x.at(band.forwardXMm()), top, x.at(band.aftXMm()), bottom);
            board.plate().open("band");
            board.plate().area(box, Pen.BAND);
            board.plate().hatch(box, 9);
            upright(band.forwardXMm(), top, bottom, Pen.EDGE);
            upright(band.aftXMm(), top, bottom, Pen.EDGE);
            board.plate().close();
        }
    }

    private void upright(double xMm, double top, double bottom, Pen pen) {
        board.plate().line(new Spot(x.at(xMm), top), new Spot(x.at(xMm), bottom), pen);
    }
}
