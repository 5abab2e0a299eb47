package dev.ledgerwing.report.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How much room text takes at one size. Measured in the font of the sheets, with room to spare: a browser may set a page in a wider
 * one.
 *
 * @param size of the letters, in units of the drawing
 */
record Lettering(double size) {

    private static final String FONT_FILE = "/META-INF/resources/paper/fonts/Roboto-Regular.ttf";
    private static final double WIDER = 1.2;
    private static final float MEASURED_AT = 100;
    private static final double ASCENT = 0.78;
    private static final double DESCENT = 0.24;
    private static final String CUT = "…";
    private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);
    private static final Font FONT = font();

    double width(String text) {
        return WIDER * size * FONT.getStringBounds(text, PLAIN).getWidth() / MEASURED_AT;
    }

    /** The room of {@code text} on a baseline through {@code at}. */
    Box box(Spot at, Anchor anchor, String text) {
        double width = width(text);
        double left = at.x() - anchor.share() * width;
        return new Box(left, at.y() - ASCENT * size, left + width, at.y() + DESCENT * size);
    }

    /** {@code text}, cut to fit into {@code room}. */
    String cut(String text, double room) {
        if (width(text) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end).stripTrailing() + CUT) > room) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + CUT;
    }

    /** {@code text} in lines of at most {@code room}, broken between words; what does not fit into {@code most} lines is cut. */
    List<String> wrapped(String text, double room, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (lines.size() < most - 1 && width(rest) > room) {
            int end = breakBefore(rest, room);
            if (end <= 0) {
                break;
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end).strip();
        }
        lines.add(cut(rest, room));
        return lines;
    }

    /** The last space up to which the text has room. */
    private int breakBefore(String text, double room) {
        int space = text.lastIndexOf(' ');
        while (space > 0 && width(text.substring(0, space)) > room) {
            space = text.lastIndexOf(' ', space - 1);
        }
        return space;
    }

    private static Font font() {
        try (InputStream file = Objects.requireNonNull(Lettering.class.getResourceAsStream(FONT_FILE))) {
            return Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(MEASURED_AT);
        } catch (FontFormatException | IOException packedWithUs) {
            throw new IllegalStateException(packedWithUs);
        }
    }
}
