package dev.ledgerwing.report.drawing;

import java.util.List;

/** How an area is filled so that it is told from its neighbours without colour. */
enum Pattern {
    SOLID,
    EMPTY,
    RISING,
    LEVEL,
    FALLING,
    CROSSED,
    UPRIGHT;

    private static final double APART = 5;

    /** The first of them for the first part, and so on; all over again after the last. */
    static Pattern of(int part) {
        return values()[part % values().length];
    }

    void fill(Plate plate, Box box) {
        plate.polygon(
                List.of(
                        new Spot(box.left(), box.top()),
                        new Spot(box.right(), box.top()),
                        new Spot(box.right(), box.bottom()),
                        new Spot(box.left(), box.bottom())),
                Pen.STACK);
        switch (this) {
            case SOLID -> plate.area(box, Pen.LOAD);
            case EMPTY -> {}
            case RISING -> plate.hatch(box, APART);
            case FALLING -> falling(plate, box);
            case CROSSED -> {
                plate.hatch(box, APART);
                falling(plate, box);
            }
            case LEVEL -> {
                for (double y = box.top() + 3; y < box.bottom() - 1; y += 3) {
                    plate.line(new Spot(box.left(), y), new Spot(box.right(), y), Pen.STACK);
                }
            }
            case UPRIGHT -> {
                for (double x = box.left() + 3; x < box.right() - 1; x += 3) {
                    plate.line(new Spot(x, box.top()), new Spot(x, box.bottom()), Pen.STACK);
                }
            }
        }
    }

    private static void falling(Plate plate, Box box) {
        for (double start = box.left() - box.height() + APART; start < box.right(); start += APART) {
            double from = Math.max(start, box.left());
            double to = Math.min(start + box.height(), box.right());
            plate.line(new Spot(from, box.top() + from - start), new Spot(to, box.top() + to - start), Pen.STACK);
        }
    }
}
