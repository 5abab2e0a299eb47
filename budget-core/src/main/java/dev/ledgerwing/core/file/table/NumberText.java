package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.Reading;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as it stands in a cell.
 *
 * @param digits without sign, exponent and unit
 * @param unit what follows the number; empty = nothing
 */
record NumberText(BigDecimal value, String digits, String unit) {

    private static final Pattern NUMBER = Pattern.compile(
            "([-+−]?)\\s*(\\d(?:[\\d.,'’\\s\\u00a0\\u2009\\u202f]*[\\d.,])?|[.,]\\d+)((?:[eE][-+]?\\d{1,4})?)\\s*(.*)",
            Pattern.DOTALL);
    private static final int LONGEST = 60;

    /** The digits a text begins with, a sign apart; nothing where it is no number. */
    static Optional<String> digits(String text) {
        return matched(text).map(matcher -> matcher.group(2));
    }

    /** Reads {@code text}; the trouble is the end of a sentence that begins with the text. */
    static Reading<NumberText> read(String text, DecimalMark mark) {
        return matched(text).map(matcher -> read(matcher, mark)).orElseGet(() -> Reading.wrong("is not a number"));
    }

    /** Half a unit of the last digit written: what rounding may have taken away. */
    BigDecimal halfDigit() {
        return value.ulp().divide(BigDecimal.valueOf(2));
    }

    private static Reading<NumberText> read(Matcher matcher, DecimalMark mark) {
        String digits = matcher.group(2);
        Optional<BigDecimal> plain = NumberShape.value(digits, mark.mark());
        if (plain.isEmpty()) {
            return Reading.wrong(
                    NumberShape.of(digits) == NumberShape.NONE
                            ? "is not a number"
                            : "does not fit the other numbers of this table, whose decimal mark is the " + mark.word());
        }
        String exponent = matcher.group(3);
        int shift = exponent.isEmpty() ? 0 : Integer.parseInt(exponent.substring(1));
        BigDecimal value = plain.get().scaleByPowerOfTen(shift);
        boolean negative = matcher.group(1).equals("-") || matcher.group(1).equals("−");
        return Reading.of(new NumberText(negative ? value.negate() : value, digits, matcher.group(4)));
    }

    private static Optional<Matcher> matched(String text) {
        Matcher matcher = NUMBER.matcher(text);
        return text.length() <= LONGEST && matcher.matches() ? Optional.of(matcher) : Optional.empty();
    }
}
