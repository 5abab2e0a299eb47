package dev.ledgerwing.report.drawing;

/**
 * A drawing in two layouts, of which a page shows one: classes {@code wide} and {@code narrow} of its style sheet say when.
 *
 * @param wide an SVG element for a desk and for paper
 * @param narrow the same for a phone
 */
public record Picture(String wide, String narrow) {}
