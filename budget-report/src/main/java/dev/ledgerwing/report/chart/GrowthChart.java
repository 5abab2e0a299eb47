package dev.ledgerwing.report.chart;

import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.mass.GrowthHistory.Point;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.report.sheet.PaperFiles;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jfree.svg.SVGGraphics2D;

/**
 * How the mass of an airframe has grown, against the target of the time. Curves have the classes {@code predicted}, {@code basic},
 * {@code target} and {@code trend}; without a style sheet all are drawn in the colour of the text around them.
 */
public final class GrowthChart {

    private static final int WIDTH = 860;
    private static final int HEIGHT = 330;
    private static final float FONT_SIZE = 13;
    private static final Font FONT = font();
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private GrowthChart() {}

    /**
     * The chart as an SVG element to stand in a page: it scales to the width it is given, names itself for those who do not see it,
     * and is the same for equal histories.
     *
     * @throws IllegalArgumentException where the history has no point
     */
    public static String svg(GrowthHistory history, Figures units) {
        if (history.points().isEmpty()) {
            throw new IllegalArgumentException("a growth chart needs one revision at least");
        }
        GrowthCurves curves = new GrowthCurves(history, units.units().massUnit());
        SVGGraphics2D drawing = new SVGGraphics2D(WIDTH, HEIGHT);
        drawing.setGeomDoubleConverter(GrowthChart::tenths);
        drawing.setTransformDoubleConverter(GrowthChart::tenths);
        new GrowthPlot(curves, units, FONT).chart().draw(drawing, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        return PageDrawing.of(drawing.getSVGElement(), "growth-chart", title(curves, units));
    }

    private static String tenths(double coordinate) {
        return BigDecimal.valueOf(coordinate)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** What the chart shows, in words. */
    private static String title(GrowthCurves curves, Figures units) {
        Point last = curves.last();
        Mass target = last.target();
        return "Mass from " + DAY.format(curves.first().day()) + " to " + DAY.format(last.day()) + ": predicted "
                + units.mass(curves.first().predicted()) + " at first, " + units.mass(last.predicted()) + " at last; "
                + (target == null ? "no target is set" : "target " + units.mass(target));
    }

    private static Font font() {
        try {
            return Font.createFont(
                            Font.TRUETYPE_FONT, new ByteArrayInputStream(PaperFiles.bytes("fonts/Roboto-Regular.ttf")))
                    .deriveFont(FONT_SIZE);
        } catch (FontFormatException | IOException packedWithUs) {
            throw new IllegalStateException(packedWithUs);
        }
    }
}
