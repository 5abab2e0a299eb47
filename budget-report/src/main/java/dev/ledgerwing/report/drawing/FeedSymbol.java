package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.List;

/** The small drawing of a source or of one thing on a way, told from all others by its shape. */
record FeedSymbol(Plate plate, Spot at, State state) {

    static final double HALF_WIDTH = 13;
    static final double HALF_HEIGHT = 9;

    void draw(FeedElement.Kind kind) {
        switch (kind) {
            case WIRE -> wire();
            case CONNECTOR -> connector();
            case FUSE -> fuse();
            case BREAKER -> breaker();
            case SWITCH -> toggle();
            case SENSOR -> sensor();
            case DIODE -> diode();
            case REGULATOR -> regulator();
            case MOTOR_CONTROLLER -> controller();
        }
        cross();
    }

    void draw(PowerSource.Kind kind) {
        switch (kind) {
            case BATTERY -> battery();
            case SOLAR -> solar();
            case EXTERNAL -> external();
        }
        cross();
    }

    private Pen shape() {
        return state == State.DARK ? Pen.SYMBOL_DARK : Pen.SYMBOL;
    }

    private void stroke(double fromX, double fromY, double toX, double toY) {
        plate.line(at.plus(fromX, fromY), at.plus(toX, toY), state == State.DARK ? Pen.FEED_DARK : Pen.FEED);
    }

    private void box(double halfWidth, double halfHeight) {
        plate.polygon(
                List.of(
                        at.plus(-halfWidth, -halfHeight),
                        at.plus(halfWidth, -halfHeight),
                        at.plus(halfWidth, halfHeight),
                        at.plus(-halfWidth, halfHeight)),
                shape());
    }

    private void wire() {
        stroke(-7, 5, -1, -5);
        stroke(1, 5, 7, -5);
    }

    private void connector() {
        plate.polygon(List.of(at.plus(-9, -5), at.plus(2, -5), at.plus(7, 0), at.plus(2, 5), at.plus(-9, 5)), shape());
        stroke(5, -6, 11, 0);
        stroke(5, 6, 11, 0);
    }

    private void fuse() {
        box(11, 5);
        stroke(-11, 0, 11, 0);
    }

    private void breaker() {
        box(9, 7);
        stroke(-9, 7, 9, -7);
    }

    private void toggle() {
        plate.polygon(List.of(at.plus(-8, -3), at.plus(9, -3), at.plus(9, 3), at.plus(-8, 3)), shape());
        plate.circle(at.plus(-9, 0), 2.4, shape());
        plate.circle(at.plus(10, 0), 2.4, shape());
        stroke(-8, -1, 8, -8);
    }

    private void sensor() {
        plate.circle(at, 8, shape());
        stroke(-4, 4, 4, -4);
        stroke(4, -4, 0, -3);
        stroke(4, -4, 3, 0);
    }

    private void diode() {
        plate.polygon(List.of(at.plus(-7, -7), at.plus(-7, 7), at.plus(6, 0)), shape());
        stroke(7, -7, 7, 7);
    }

    private void regulator() {
        box(12, 8);
        stroke(-8, -4, 0, -4);
        stroke(0, -4, 0, 4);
        stroke(0, 4, 8, 4);
    }

    private void controller() {
        box(12, 8);
        stroke(-8, 0, -4, -5);
        stroke(-4, -5, 0, 0);
        stroke(0, 0, 4, 5);
        stroke(4, 5, 8, 0);
    }

    private void battery() {
        box(12, 8);
        stroke(-6, -5, -6, 5);
        stroke(-2, -2.5, -2, 2.5);
        stroke(3, -5, 3, 5);
        stroke(7, -2.5, 7, 2.5);
    }

    private void solar() {
        box(12, 8);
        stroke(-4, -8, -4, 8);
        stroke(4, -8, 4, 8);
        stroke(-12, 0, 12, 0);
    }

    private void external() {
        plate.circle(at, 8, shape());
        stroke(-3, -3, -3, 3);
        stroke(3, -3, 3, 3);
    }

    private void cross() {
        if (state == State.FAILED) {
            plate.line(at.plus(-12, -10), at.plus(12, 10), Pen.CROSS);
            plate.line(at.plus(-12, 10), at.plus(12, -10), Pen.CROSS);
        }
    }
}
