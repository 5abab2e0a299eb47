package dev.ledgerwing.report.chart;

import java.awt.Color;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What is drawn with one ink. While the library draws, each has a colour of its own; in the page that becomes a class, so that a style
 * sheet may colour it, and the colour of the text around it where none does.
 */
enum Ink {
    TEXT(0x010101, 1),
    GRID(0x020202, 0.2),
    PREDICTED(0x030303, 1),
    BASIC(0x040404, 0.65),
    TARGET(0x050505, 1),
    TREND(0x060606, 0.8);

    private final Color color;
    private final double opacity;

    Ink(int rgb, double opacity) {
        this.color = new Color(rgb);
        this.opacity = opacity;
    }

    /** The colour that stands for it while drawing. */
    Color color() {
        return color;
    }

    /** How strongly it shows: 0 to 1. */
    double opacity() {
        return opacity;
    }

    String cssClass() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The ink that the library wrote as {@code rgb(1,1,1)} or the like. */
    static Optional<Ink> written(String color) {
        return Arrays.stream(values())
                .filter(ink -> color.equals(ink.writtenColor()))
                .findFirst();
    }

    private String writtenColor() {
        return "rgb(" + color.getRed() + "," + color.getGreen() + "," + color.getBlue() + ")";
    }
}
