package dev.ledgerwing.report.drawing;

/** For what width a drawing is laid out; its text is readable where it is shown at about that many pixels or more. */
public enum Layout {
    /** For a desk and for paper. */
    WIDE(760, 13, 450, 144),
    /** For a phone. */
    NARROW(360, 12.5, 320, 170);

    private final double width;
    private final double letters;
    private final double mostHeight;
    private final double heap;

    Layout(double width, double letters, double mostHeight, double heap) {
        this.width = width;
        this.letters = letters;
        this.mostHeight = mostHeight;
        this.heap = heap;
    }

    double width() {
        return width;
    }

    /** Size of the letters. */
    double letters() {
        return letters;
    }

    /** How tall the airframe from above may be. */
    double mostHeight() {
        return mostHeight;
    }

    /** How tall the masses along the stations may be heaped. */
    double heap() {
        return heap;
    }

    boolean isWide() {
        return this == WIDE;
    }
}
