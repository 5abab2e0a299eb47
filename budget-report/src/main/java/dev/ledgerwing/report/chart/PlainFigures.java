package dev.ledgerwing.report.chart;

import dev.ledgerwing.core.quantity.Figures;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Figures along an axis with their unit, written as everywhere else. */
final class PlainFigures extends NumberFormat {

    private static final long serialVersionUID = 1;
    private static final int DECIMALS = 3;
    private static final char THIN_SPACE_THAT_HOLDS = '\u202F';

    private final String unit;

    PlainFigures(String unit) {
        this.unit = unit;
    }

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        return to.append(Figures.number(number, DECIMALS))
                .append(THIN_SPACE_THAT_HOLDS)
                .append(unit);
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
        return format((double) number, to, position);
    }

    @Override
    public Number parse(String text, ParsePosition position) {
        throw new UnsupportedOperationException("numbers along an axis are only written");
    }
}
