package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.text.PrintableText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * An SVG drawing in the making. Carries no ids, no style attributes and no style element, so that it can stand in any page under a
 * strict content security policy, more than once. Remembers where its labels and lines are.
 */
final class Plate {

    private static final double SMALLER = 0.86;

    private final StringBuilder svg = new StringBuilder();
    private final List<Drawn.Label> labels = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final Lettering letters;
    private final Lettering smallLetters;
    private final Layout layout;

    Plate(Layout layout) {
        this.layout = layout;
        this.letters = new Lettering(layout.letters());
        this.smallLetters = new Lettering(layout.letters() * SMALLER);
    }

    double width() {
        return layout.width();
    }

    Lettering letters() {
        return letters;
    }

    Lettering smallLetters() {
        return smallLetters;
    }

    /** What follows until {@link #close} is named {@code name} to whoever points at it or reaches it with the keyboard. */
    void open(String cssClass, String name) {
        String text = escaped(name);
        svg.append("<g class=\"").append(cssClass).append("\" tabindex=\"0\" role=\"img\" aria-label=\"");
        svg.append(text).append("\"><title>").append(text).append("</title>\n");
    }

    /** What follows until {@link #close} belongs together. */
    void open(String cssClass) {
        svg.append("<g class=\"").append(cssClass).append("\">\n");
    }

    void close() {
        svg.append("</g>\n");
    }

    void line(Spot from, Spot to, Pen pen) {
        strokes.add(new Stroke(from, to, pen));
        path("M" + at(from) + "L" + at(to), pen);
    }

    void polygon(List<Spot> corners, Pen pen) {
        for (int corner = 0; corner < corners.size(); corner++) {
            strokes.add(new Stroke(corners.get(corner), corners.get((corner + 1) % corners.size()), pen));
        }
        path("M" + corners.stream().map(Plate::at).collect(Collectors.joining("L")) + "Z", pen);
    }

    /** Straight from each spot to the next. */
    void curve(List<Spot> spots, Pen pen) {
        for (int next = 1; next < spots.size(); next++) {
            strokes.add(new Stroke(spots.get(next - 1), spots.get(next), pen));
        }
        path("M" + spots.stream().map(Plate::at).collect(Collectors.joining("L")), pen);
    }

    /** A shape without an outline. */
    void fill(List<Spot> corners, Pen pen) {
        path("M" + corners.stream().map(Plate::at).collect(Collectors.joining("L")) + "Z", pen);
    }

    /** An area without an outline. */
    void area(Box box, Pen pen) {
        path(
                "M" + at(new Spot(box.left(), box.top())) + "H" + number(box.right()) + "V" + number(box.bottom()) + "H"
                        + number(box.left()) + "Z",
                pen);
    }

    /** Slanting lines over an area, {@code apart} along its edges. */
    void hatch(Box box, double apart) {
        StringBuilder path = new StringBuilder();
        for (double start = box.left() - box.height() + apart; start < box.right(); start += apart) {
            double fromX = Math.max(start, box.left());
            double toX = Math.min(start + box.height(), box.right());
            Spot from = new Spot(fromX, box.bottom() - (fromX - start));
            Spot to = new Spot(toX, box.bottom() - (toX - start));
            strokes.add(new Stroke(from, to, Pen.HATCH));
            path.append('M').append(at(from)).append('L').append(at(to));
        }
        if (!path.isEmpty()) {
            path(path.toString(), Pen.HATCH);
        }
    }

    void circle(Spot centre, double radius, Pen pen) {
        svg.append("<circle cx=\"")
                .append(number(centre.x()))
                .append("\" cy=\"")
                .append(number(centre.y()));
        svg.append("\" r=\"")
                .append(number(radius))
                .append("\" ")
                .append(pen.attributes())
                .append("/>\n");
    }

    /** A square on its corner. */
    void diamond(Spot centre, double half, Pen pen) {
        polygon(List.of(centre.plus(0, -half), centre.plus(half, 0), centre.plus(0, half), centre.plus(-half, 0)), pen);
    }

    /** The draughtsman's mark for a centre of gravity: a circle with two quarters filled. */
    void quartered(Spot centre, double radius) {
        circle(centre, radius, Pen.PREDICTED);
        sector(centre, radius, true);
        sector(centre, radius, false);
    }

    /** A line going over another one, from left to right. */
    void hop(Spot centre, double radius, Pen pen) {
        strokes.add(new Stroke(centre.plus(-radius, 0), centre.plus(radius, 0), pen));
        path(
                "M" + at(centre.plus(-radius, 0)) + "A" + number(radius) + " " + number(radius) + " 0 0 1 "
                        + at(centre.plus(radius, 0)),
                pen);
    }

    /** The right half of a disc. */
    void half(Spot centre, double radius, Pen pen) {
        path(
                "M" + at(centre.plus(0, -radius)) + "A" + number(radius) + " " + number(radius) + " 0 0 1 "
                        + at(centre.plus(0, radius)) + "Z",
                pen);
    }

    /** A filled quarter of a circle: the upper right or the lower left one. */
    private void sector(Spot centre, double radius, boolean upperRight) {
        double way = upperRight ? radius : -radius;
        String rim = "A" + number(radius) + " " + number(radius) + " 0 0 1 ";
        Spot start = centre.plus(0, -way);
        path("M" + at(centre) + "L" + at(start) + rim + at(centre.plus(way, 0)) + "Z", Pen.BASIC);
    }

    void label(Spot at, Anchor anchor, String text) {
        label(at, anchor, text, letters);
    }

    void small(Spot at, Anchor anchor, String text) {
        label(at, anchor, text, smallLetters);
    }

    private void label(Spot at, Anchor anchor, String text, Lettering lettering) {
        labels.add(new Drawn.Label(text, lettering.box(at, anchor, text)));
        svg.append("<text x=\"").append(number(at.x())).append("\" y=\"").append(number(at.y()));
        svg.append("\" text-anchor=\"")
                .append(anchor.word())
                .append("\" font-size=\"")
                .append(number(lettering.size()));
        svg.append(lettering.equals(letters) ? "\">" : "\" class=\"small\">");
        svg.append(escaped(text)).append("</text>\n");
    }

    private void path(String path, Pen pen) {
        svg.append("<path d=\"")
                .append(path)
                .append("\" ")
                .append(pen.attributes())
                .append("/>\n");
    }

    /** The whole drawing, {@code height} tall; whole numbers, since the PDF renderer reads no others there. */
    Drawn finish(String cssClass, String name, double height) {
        double whole = Math.ceil(height);
        String element = "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"balance-drawing " + cssClass + " "
                + layout.name().toLowerCase(Locale.ROOT) + "\" viewBox=\"0 0 " + number(layout.width()) + " "
                + number(whole) + "\" role=\"group\" aria-label=\"" + escaped(name)
                + "\" fill=\"currentColor\" font-family=\"Sheet, 'Sheet symbols', sans-serif\">\n" + svg + "</svg>";
        return new Drawn(element, new Box(0, 0, layout.width(), whole), labels, strokes);
    }

    private static String at(Spot spot) {
        return number(spot.x()) + " " + number(spot.y());
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String escaped(String text) {
        return PrintableText.of(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
