package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Control;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The small drawing of a control, told from the others by its shape. */
record ControlSymbol(Plate plate, Spot at) {

    private static final double HALF = 11;

    void draw(Control.@Nullable Kind kind, int stops) {
        if (kind == null) {
            plate.circle(at, HALF - 3, Pen.PRESET);
            return;
        }
        switch (kind) {
            case STICK -> stick();
            case SLIDER -> slider();
            case SWITCH -> toggle(at, stops);
            case MIXED -> {
                toggle(at.plus(-8, 0), 2);
                toggle(at.plus(8, 0), 2);
            }
        }
    }

    private void stick() {
        plate.circle(at, HALF, Pen.STOP);
        plate.line(at.plus(-HALF + 3, 0), at.plus(HALF - 3, 0), Pen.HATCH);
        plate.line(at.plus(0, -HALF + 3), at.plus(0, HALF - 3), Pen.HATCH);
        plate.line(at, at.plus(4, -5), Pen.CHORD);
        plate.circle(at.plus(4, -5), 3, Pen.KNOB);
    }

    private void slider() {
        plate.polygon(List.of(at.plus(-3, -HALF), at.plus(3, -HALF), at.plus(3, HALF), at.plus(-3, HALF)), Pen.STOP);
        plate.polygon(List.of(at.plus(-8, -2), at.plus(8, -2), at.plus(8, 3), at.plus(-8, 3)), Pen.KNOB);
    }

    /** A lever, and a dot for each of its places. */
    private void toggle(Spot centre, int stops) {
        double half = Math.min(HALF - 2, 4.0 * (stops - 1));
        plate.line(centre.plus(-4, 0), centre.plus(5, -half), Pen.CHORD);
        plate.circle(centre.plus(-4, 0), 3, Pen.STOP);
        for (int stop = 0; stop < stops; stop++) {
            double down = stops == 1 ? 0 : -half + 2 * half * stop / (stops - 1);
            plate.circle(centre.plus(7, down), 1.3, Pen.KNOB);
        }
    }
}
