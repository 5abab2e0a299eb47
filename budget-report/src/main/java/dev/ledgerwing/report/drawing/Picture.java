package dev.ledgerwing.report.drawing;

/**
 * A drawing in two layouts, of which a page shows one: the style sheet tells by the classes {@code wide} and {@code narrow}.
 *
 * @param wide an SVG element for a desk and for paper
 * @param narrow the same for a phone
 */
public record Picture(String wide, String narrow) {

    /** Both layouts in the element that the style sheets choose by; nothing in it needs escaping any more. */
    public String html() {
        return "<div class=\"balance-picture\">" + wide + narrow + "</div>";
    }
}
