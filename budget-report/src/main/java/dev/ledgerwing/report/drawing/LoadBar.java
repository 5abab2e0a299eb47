package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Demand against rating as a bar: filled up to the demand, a long stroke where the rating ends, a short one where the reserve begins;
 * the share in figures, and the verdict as shape and word.
 */
record LoadBar(Plate plate, LoadMark load) {

    static final double LENGTH = 46;
    private static final double DEPTH = 7;
    private static final double MARK = 4;
    private static final double FULL_AT = 125;

    /** Whether there is anything to draw: not before something is solved. */
    boolean isSolved() {
        return load.verdict() != null;
    }

    /** {@code 63 %}; empty where it is not known. */
    String share() {
        Double percent = load.percent();
        return percent == null ? "" : Figures.number(percent, 0) + "\u2009%";
    }

    /** The bar, from {@code left}, its middle {@code down}; {@code 63 %} beside it. */
    void draw(Spot left) {
        plate.open(cssClass(load.verdict()));
        Double percent = load.percent();
        box(left, LENGTH, Pen.LOAD_ROOM);
        if (percent != null && percent > 0) {
            plate.area(area(left, at(percent)), Pen.LOAD);
        }
        double reserve = at(100 - load.reservePercent());
        plate.line(left.plus(reserve, -DEPTH / 2 - 3), left.plus(reserve, -DEPTH / 2), Pen.EDGE);
        plate.line(left.plus(at(100), -DEPTH / 2 - 3), left.plus(at(100), DEPTH / 2 + 3), Pen.EDGE);
        plate.close();
        if (percent != null) {
            plate.small(left.plus(LENGTH + 5, 4), Anchor.START, share());
        }
    }

    private static double at(double percent) {
        return LENGTH * Math.min(percent, FULL_AT) / FULL_AT;
    }

    private static Box area(Spot left, double length) {
        return new Box(left.x(), left.y() - DEPTH / 2, left.x() + length, left.y() + DEPTH / 2);
    }

    private void box(Spot left, double length, Pen pen) {
        Box box = area(left, length);
        plate.polygon(
                List.of(
                        new Spot(box.left(), box.top()),
                        new Spot(box.right(), box.top()),
                        new Spot(box.right(), box.bottom()),
                        new Spot(box.left(), box.bottom())),
                pen);
    }

    /** A verdict as shape and word, its text on the baseline through {@code left}; gives its width. */
    static double verdict(Plate plate, Spot left, Verdict verdict) {
        plate.open(cssClass(verdict));
        mark(plate, left.plus(MARK + 1, -MARK), verdict);
        plate.close();
        plate.small(left.plus(3 * MARK + 2, 0), Anchor.START, verdict.word());
        return width(plate, verdict);
    }

    static double width(Plate plate, Verdict verdict) {
        return 3 * MARK + 2 + plate.smallLetters().width(verdict.word());
    }

    private static void mark(Plate plate, Spot centre, Verdict verdict) {
        switch (verdict) {
            case HOLDS -> plate.circle(centre, MARK, Pen.SHAPE);
            case TIGHT -> {
                plate.circle(centre, MARK, Pen.SHAPE_OPEN);
                plate.half(centre, MARK, Pen.SHAPE);
            }
            case BREAKS ->
                plate.polygon(
                        List.of(centre.plus(0, -MARK), centre.plus(MARK, MARK), centre.plus(-MARK, MARK)), Pen.SHAPE);
            case UNKNOWN -> plate.diamond(centre, MARK, Pen.SHAPE_OPEN);
        }
    }

    static String cssClass(@Nullable Verdict verdict) {
        return verdict == null ? "unsolved" : verdict.name().toLowerCase(Locale.ROOT);
    }
}
