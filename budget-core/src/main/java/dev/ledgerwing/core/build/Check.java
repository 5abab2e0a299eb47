package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The checks that constructors of the record share; each refusal is a sentence with the allowed range and what was given. */
final class Check {

    static final double LARGEST_MASS_G = 1_000_000;
    static final double LARGEST_LENGTH_MM = 100_000;

    private static final Pattern SLUG = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,39}");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\n\\t]]|\\p{Cs}");

    private Check() {}

    static void slug(String what, String text) {
        require(
                SLUG.matcher(text).matches(),
                what + " must be lower-case letters, digits and hyphens, 1 to 40 of them, was “" + text + "”");
    }

    static void id(String what, String text) {
        require(
                ID.matcher(text).matches(),
                what + " must be letters, digits, hyphens and underscores, 1 to 40 of them, was “" + text + "”");
    }

    /** A name: 1 to 200 characters, not blank, no control characters but line breaks and tabs. */
    static void name(String what, String text) {
        require(!text.isBlank(), what + " must not be empty");
        text(what, text, 200);
    }

    static void text(String what, @Nullable String text, int longest) {
        if (text == null) {
            return;
        }
        require(text.length() <= longest, what + " must be at most " + longest + " characters, was " + text.length());
        require(!CONTROL.matcher(text).find(), what + " must not hold control characters or halves of characters");
    }

    static void mass(String what, @Nullable Mass mass) {
        require(
                mass == null || (!mass.isNegative() && mass.grams() <= LARGEST_MASS_G),
                what + " must be from 0 to 1000000 g, was " + (mass == null ? "" : plain(mass.grams()) + " g"));
    }

    static void coordinate(String what, @Nullable Length length) {
        require(
                length == null || Math.abs(length.mm()) <= LARGEST_LENGTH_MM,
                what + " must be from -100000 to 100000 mm, was " + (length == null ? "" : plain(length.mm()) + " mm"));
    }

    static void extent(String what, @Nullable Length length) {
        require(
                length == null || (length.um() >= 0 && length.mm() <= LARGEST_LENGTH_MM),
                what + " must be from 0 to 100000 mm, was " + (length == null ? "" : plain(length.mm()) + " mm"));
    }

    static void within(String what, @Nullable Double value, double least, double most, String unit) {
        require(
                value == null || (value >= least && value <= most),
                what + " must be from " + plain(least) + " to " + plain(most) + unit + ", was " + value);
    }

    static void within(String what, int value, int least, int most) {
        require(value >= least && value <= most, what + " must be from " + least + " to " + most + ", was " + value);
    }

    static void require(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
