package dev.ledgerwing.report.chart;

import dev.ledgerwing.core.quantity.Figures;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.text.SimpleDateFormat;
import java.time.LocalDate;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;

/** How the growth chart looks: told apart by the kind of line, so that it needs no colour. */
final class GrowthPlot {

    private static final Shape DOT = new Ellipse2D.Double(-3, -3, 6, 6);
    private static final Shape SMALL_DOT = new Ellipse2D.Double(-1.5, -1.5, 3, 3);
    private static final Shape KEY_LINE = new Line2D.Double(-14, 0, 14, 0);
    private static final TimeZone UTC = TimeZone.getTimeZone("UTC");
    private static final int SHORT_DAYS = 100;
    private static final int LEAST_DAYS = 14;

    private final GrowthCurves curves;
    private final Figures units;
    private final Font font;

    GrowthPlot(GrowthCurves curves, Figures units, Font font) {
        this.curves = curves;
        this.units = units;
        this.font = font;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot(null, days(), mass(), null);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Ink.GRID.color());
        plot.setRangeGridlineStroke(new BasicStroke(1));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        add(plot, curves.predicted(), line(Ink.PREDICTED, new BasicStroke(2.5f), DOT));
        add(plot, curves.basic(), line(Ink.BASIC, new BasicStroke(1.25f), SMALL_DOT));
        add(plot, curves.target(), steps(Ink.TARGET, dashed(8, 4)));
        add(plot, curves.trend(), line(Ink.TREND, dashed(2, 4), null));
        JFreeChart chart = new JFreeChart(null, font, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(new RectangleInsets(2, 2, 2, 30));
        chart.addLegend(key(plot));
        return chart;
    }

    private DateAxis days() {
        DateAxis days = new DateAxis(null, UTC, Locale.ENGLISH);
        dress(days);
        LocalDate first = curves.first().day();
        days.setAutoRangeMinimumSize(GrowthCurves.x(first.plusDays(LEAST_DAYS)) - GrowthCurves.x(first));
        boolean isShort = curves.end().isBefore(first.plusDays(SHORT_DAYS));
        SimpleDateFormat format = new SimpleDateFormat(isShort ? "d MMM yyyy" : "MMM yyyy", Locale.ENGLISH);
        format.setTimeZone(UTC);
        days.setDateFormatOverride(format);
        return days;
    }

    private NumberAxis mass() {
        NumberAxis mass = new NumberAxis();
        dress(mass);
        mass.setAutoRangeIncludesZero(false);
        mass.setTickLabelInsets(new RectangleInsets(7, 4, 7, 4)); // fewer, rounder figures
        mass.setNumberFormatOverride(new PlainFigures(units.smallMassUnit()));
        return mass;
    }

    private void dress(Axis axis) {
        axis.setTickLabelFont(font);
        axis.setTickLabelPaint(Ink.TEXT.color());
        axis.setAxisLinePaint(Ink.TEXT.color());
        axis.setTickMarkPaint(Ink.TEXT.color());
    }

    private static void add(XYPlot plot, XYSeriesCollection curve, XYItemRenderer renderer) {
        if (curve.getItemCount(0) > 0) {
            int index = plot.getDatasetCount();
            plot.setDataset(index, curve);
            plot.setRenderer(index, renderer);
        }
    }

    private static XYItemRenderer line(Ink ink, Stroke stroke, @Nullable Shape dot) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, dot != null);
        return inked(renderer, ink, stroke, dot);
    }

    private static XYItemRenderer steps(Ink ink, Stroke stroke) {
        return inked(new XYStepRenderer(), ink, stroke, null);
    }

    private static XYItemRenderer inked(XYLineAndShapeRenderer renderer, Ink ink, Stroke stroke, @Nullable Shape dot) {
        renderer.setSeriesPaint(0, ink.color());
        renderer.setSeriesStroke(0, stroke);
        renderer.setLegendTextPaint(0, Ink.TEXT.color());
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setDrawOutlines(false);
        renderer.setLegendLine(KEY_LINE);
        if (dot != null) {
            renderer.setSeriesShape(0, dot);
        }
        return renderer;
    }

    private static Stroke dashed(float dash, float gap) {
        return new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {dash, gap}, 0);
    }

    private LegendTitle key(XYPlot plot) {
        LegendTitle key = new LegendTitle(plot);
        key.setItemFont(font);
        key.setItemPaint(Ink.TEXT.color());
        key.setFrame(BlockBorder.NONE);
        key.setBackgroundPaint(null);
        key.setPosition(RectangleEdge.TOP);
        key.setHorizontalAlignment(HorizontalAlignment.LEFT);
        return key;
    }
}
