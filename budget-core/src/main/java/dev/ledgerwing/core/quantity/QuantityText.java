package dev.ledgerwing.core.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers with units as people type them: {@code 1.2 kg}, {@code 3,5 oz}, {@code 1 200}, {@code 85 mm}. The decimal mark
 * is a point or a comma whatever the machine's language; where both stand in one number the last one is the decimal mark.
 */
public final class QuantityText {

    private static final Pattern NUMBER_AND_UNIT = Pattern.compile(
            "([-+−]?[\\d.,'’\\s\\u00a0\\u2009\\u202f]*\\d[.,]?(?:[eE][-+]?\\d{1,4})?)\\s*(.*)", Pattern.DOTALL);
    private static final Pattern GROUPING = Pattern.compile("['’\\s\\u00a0\\u2009\\u202f]");
    private static final Pattern WHOLE_PART =
            Pattern.compile("[-+−]?(?:\\d*|\\d{1,3}(?:[.,'’ \\u00a0\\u2009\\u202f]\\d{3})+)(?:[eE][-+]?\\d{1,4})?");
    private static final int LONGEST = 60;

    private QuantityText() {}

    /** Reads a mass; a number without a unit counts in {@code unless}. An empty text reads as nothing. */
    public static Reading<Mass> mass(String text, MassUnit unless) {
        return read(
                        text,
                        "a mass such as 85, 1.2 kg or 3.5 oz",
                        unit -> unit.isEmpty()
                                ? Optional.of(unless.inGrams())
                                : MassUnit.spelt(unit).map(MassUnit::inGrams))
                .map(QuantityText::toMass);
    }

    /** Reads a length; a number without a unit counts in {@code unless}. An empty text reads as nothing. */
    public static Reading<Length> length(String text, LengthUnit unless) {
        return read(
                        text,
                        "a length such as 210, 85 mm or 3 in",
                        unit -> unit.isEmpty()
                                ? Optional.of(unless.inMm())
                                : LengthUnit.spelt(unit).map(LengthUnit::inMm))
                .map(QuantityText::toLength);
    }

    /** Reads a plain number, a per cent sign allowed behind it. An empty text reads as nothing. */
    public static Reading<Double> number(String text) {
        return read(
                        text,
                        "a number such as 12.5",
                        unit -> unit.isEmpty() || unit.equals("%") ? Optional.of(1.0) : Optional.empty())
                .map(scaled -> Reading.of(scaled.number() * scaled.scale() + 0.0)); // no minus zero
    }

    /** Reads a number that counts in {@code unit}, with a unit of its kind behind it or none. An empty text reads as nothing. */
    public static Reading<Double> number(String text, NumberUnit unit) {
        return read(text, unit.expected(), unit::spelt).map(QuantityText::toNumber);
    }

    private static Reading<Double> toNumber(Scaled scaled) {
        double number = BigDecimal.valueOf(scaled.number())
                .multiply(BigDecimal.valueOf(scaled.scale()))
                .doubleValue();
        return Double.isFinite(number) ? Reading.of(number + 0.0) : Reading.wrong("is too large"); // no minus zero
    }

    /** The number itself, with {@code mark} ('.' or ',') as its decimal mark and the other one grouping thousands. */
    public static Optional<Double> plainNumber(String text, char mark) {
        String grouped = GROUPING.matcher(text.strip()).replaceAll("").replace('−', '-');
        String other = mark == '.' ? "," : ".";
        try {
            double value = new BigDecimal(grouped.replace(other, "").replace(mark, '.')).doubleValue();
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    private static Reading<Mass> toMass(Scaled scaled) {
        double grams = scaled.number() * scaled.scale();
        return Math.abs(grams) <= 1e9
                ? Reading.of(Mass.ofGrams(grams))
                : Reading.wrong("is too large to be a mass here");
    }

    private static Reading<Length> toLength(Scaled scaled) {
        double mm = scaled.number() * scaled.scale();
        return Math.abs(mm) <= 1e9 ? Reading.of(Length.ofMm(mm)) : Reading.wrong("is too large to be a length here");
    }

    private static Parsed read(String text, String expected, Function<String, Optional<Double>> units) {
        String shown = text.strip();
        if (shown.isEmpty()) {
            return new Parsed(Reading.nothing());
        }
        String wrong = "is not " + expected + ": “" + shorten(shown) + "”";
        Matcher matcher = NUMBER_AND_UNIT.matcher(shown);
        if (shown.length() > LONGEST || !matcher.matches()) {
            return new Parsed(Reading.wrong(wrong));
        }
        String digits = matcher.group(1).strip();
        char mark = decimalMark(digits);
        Optional<Double> number = isGrouped(digits, mark) ? plainNumber(digits, mark) : Optional.empty();
        Optional<Double> scale = units.apply(matcher.group(2).strip());
        if (number.isEmpty() || scale.isEmpty()) {
            return new Parsed(Reading.wrong(wrong));
        }
        return new Parsed(Reading.of(new Scaled(number.get(), scale.get())));
    }

    /** Whether marks and spaces ahead of the decimal mark stand before exactly three digits each, or not at all. */
    private static boolean isGrouped(String digits, char mark) {
        int end = digits.indexOf(mark) < 0 ? digits.length() : digits.indexOf(mark);
        return WHOLE_PART.matcher(digits.substring(0, end)).matches() && digits.indexOf(mark, end + 1) < 0;
    }

    /** The last of point and comma; a comma that stands alone in a number is a decimal comma. */
    private static char decimalMark(String digits) {
        return digits.lastIndexOf(',') > digits.lastIndexOf('.') ? ',' : '.';
    }

    private static String shorten(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    }

    private record Scaled(double number, double scale) {}

    private record Parsed(Reading<Scaled> scaled) {

        <T> Reading<T> map(Function<Scaled, Reading<T>> onward) {
            String problem = scaled.trouble();
            if (problem != null) {
                return Reading.wrong(problem);
            }
            Scaled found = scaled.found();
            return found == null ? Reading.nothing() : onward.apply(found);
        }
    }
}
