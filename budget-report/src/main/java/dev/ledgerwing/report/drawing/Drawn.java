package dev.ledgerwing.report.drawing;

import java.util.List;

/**
 * A finished drawing: its SVG element, and where on the sheet its labels and lines are.
 *
 * @param sheet the whole of it
 */
record Drawn(String svg, Box sheet, List<Label> labels, List<Stroke> strokes) {

    /** A label and the room it takes. */
    record Label(String text, Box box) {}

    Drawn {
        labels = List.copyOf(labels);
        strokes = List.copyOf(strokes);
    }
}
