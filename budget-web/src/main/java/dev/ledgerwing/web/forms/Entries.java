package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.QuantityText;
import dev.ledgerwing.core.quantity.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads what was typed, with a sentence at every field that is wrong. What is wrong reads as nothing, or as 0 where something is needed. */
public final class Entries {

    private static final double LARGEST_MASS_G = 1_000_000;
    private static final double LARGEST_LENGTH_MM = 100_000;
    private static final int LONGEST_NAME = 200;
    private static final Pattern PLAIN = Pattern.compile("[^\\p{Cc}\\p{Cf}\\p{Cs}\\p{Cn}\\p{Zl}\\p{Zp}]*");

    private final Typed typed;
    private final Shown shown;
    private final Map<String, List<String>> troubles = new LinkedHashMap<>();

    public Entries(Typed typed, Shown shown) {
        this.typed = typed;
        this.shown = shown;
    }

    public Typed typed() {
        return typed;
    }

    /** The same texts, with nothing read and nothing found wrong yet. */
    public Entries anew() {
        return new Entries(typed, shown);
    }

    /** The units that a number without one counts in: those the form was shown in. */
    public Figures figures() {
        return shown.figures();
    }

    public boolean areFine() {
        return troubles.isEmpty();
    }

    public boolean isFine(String field) {
        return !troubles.containsKey(field);
    }

    /** The sentences by field; the empty name is the form as a whole. */
    public Map<String, List<String>> troubles() {
        return troubles;
    }

    public void trouble(String field, String sentence) {
        troubles.computeIfAbsent(field, each -> new ArrayList<>()).add(sentence);
    }

    /** One line of text that can be seen; {@code missing} is said where there is none. */
    public String name(String field, String missing) {
        String text = line(field, LONGEST_NAME);
        if (text.isEmpty()) {
            trouble(field, missing);
        }
        return text;
    }

    /** One line of text that can be seen, or nothing. */
    public String line(String field, int longest) {
        String text = typed.text(field);
        if (text.length() > longest) {
            trouble(field, "This has at most " + longest + " characters.");
        } else if (!isPlain(text)) {
            trouble(field, "Please leave out line breaks and invisible characters.");
        }
        return text;
    }

    /** Whether nothing in it is invisible or breaks the line. */
    public static boolean isPlain(String text) {
        return PLAIN.matcher(text).matches();
    }

    public <E extends Enum<E>> E choice(String field, E[] values) {
        String text = typed.text(field);
        Optional<E> found =
                Arrays.stream(values).filter(each -> each.name().equals(text)).findFirst();
        if (found.isEmpty()) {
            trouble(field, "Please choose one from the list.");
        }
        return found.orElse(values[0]);
    }

    /** One of several; an empty field is none. */
    public <E extends Enum<E>> @Nullable E choiceOrNone(String field, E[] values) {
        return typed.text(field).isEmpty() ? null : choice(field, values);
    }

    /** A place along an axis, at most 100 m from the datum either way. */
    public @Nullable Length coordinate(String field) {
        return length(field, -LARGEST_LENGTH_MM, "A place is at most 100 m from the datum, either way.");
    }

    /** How long something is, from 0 to 100 m. */
    public @Nullable Length extent(String field) {
        return length(field, 0, "This is from 0 mm to 100 m.");
    }

    private @Nullable Length length(String field, double leastMm, String range) {
        String text = typed.text(field);
        Optional<Length> untouched = shown.exact(field, text, Length.class);
        if (untouched.isPresent()) {
            return untouched.get();
        }
        Length length = taken(field, QuantityText.length(text, figures().units().lengthUnit()));
        if (length != null && (length.mm() < leastMm || length.mm() > LARGEST_LENGTH_MM)) {
            trouble(field, range);
            return null;
        }
        return length;
    }

    /** From 0 to 1000 kg. */
    public @Nullable Mass mass(String field) {
        String text = typed.text(field);
        Optional<Mass> untouched = shown.exact(field, text, Mass.class);
        if (untouched.isPresent()) {
            return untouched.get();
        }
        Mass mass = taken(field, QuantityText.mass(text, figures().units().massUnit()));
        if (mass != null && (mass.isNegative() || mass.grams() > LARGEST_MASS_G)) {
            trouble(field, "A mass is from 0 g to 1000 kg.");
            return null;
        }
        return mass;
    }

    public @Nullable Double number(String field, double least, double most) {
        String text = typed.text(field);
        Optional<Double> untouched = shown.exact(field, text, Double.class);
        if (untouched.isPresent()) {
            return untouched.get();
        }
        Double number = taken(field, QuantityText.number(text));
        if (number != null && !(number >= least && number <= most)) {
            trouble(
                    field,
                    "This is a number from " + Figures.number(least, 2) + " to " + Figures.number(most, 2) + ".");
            return null;
        }
        return number;
    }

    /** A figure with a unit of its kind behind it, or none. */
    public @Nullable Double amount(String field, Bounds bounds) {
        String text = typed.text(field);
        Optional<Double> untouched = shown.exact(field, text, Double.class);
        if (untouched.isPresent()) {
            return untouched.get();
        }
        Double amount = taken(field, QuantityText.number(text, bounds.unit()));
        if (amount != null && !bounds.hold(amount)) {
            trouble(field, bounds.sentence());
            return null;
        }
        return amount;
    }

    public @Nullable Integer whole(String field, int least, int most) {
        Double number = taken(field, QuantityText.number(typed.text(field)));
        if (number != null && !(number >= least && number <= most && number == Math.rint(number))) {
            trouble(field, "This is a whole number from " + least + " to " + most + ".");
            return null;
        }
        return number == null ? null : (Integer) number.intValue();
    }

    /** One of several codes; an empty field is none. */
    public @Nullable String code(String field, Collection<String> known) {
        String chosen = typed.text(field);
        if (!chosen.isEmpty() && !known.contains(chosen)) {
            trouble(field, "This is not there any more. Please choose one from the list.");
        }
        return chosen.isEmpty() || !isFine(field) ? null : chosen;
    }

    /** A day, year-month-day. */
    public @Nullable LocalDate day(String field) {
        return taken(field, ClockText.day(typed.text(field)));
    }

    /** Hours since midnight: {@code 6:30} or {@code 6.5}. */
    public @Nullable Double hour(String field) {
        return shown.exact(field, typed.text(field), Double.class)
                .orElseGet(() -> taken(field, ClockText.hour(typed.text(field))));
    }

    /** How many hours a clock is ahead of universal time: {@code +2}, {@code −3:30}. */
    public @Nullable Double hoursAhead(String field) {
        return shown.exact(field, typed.text(field), Double.class)
                .orElseGet(() -> taken(field, ClockText.hoursAhead(typed.text(field))));
    }

    /** What was read, or a sentence that it is needed and {@code unless}. */
    public <T> T needed(String field, @Nullable T read, T unless, String missing) {
        if (read == null && isFine(field)) {
            trouble(field, missing);
        }
        return Objects.requireNonNullElse(read, unless);
    }

    /** A point; nothing where no coordinate is given, on the centre line at the datum's height where only x is. */
    public @Nullable Station station(String group) {
        Length x = coordinate(group + ".x");
        Length y = coordinate(group + ".y");
        Length z = coordinate(group + ".z");
        if (x == null && y == null && z == null) {
            return null;
        }
        Length aft = needed(group + ".x", x, Length.ZERO, "Please give how far aft of the datum it is, too.");
        return new Station(aft, orZero(y), orZero(z));
    }

    private static Length orZero(@Nullable Length length) {
        return length == null ? Length.ZERO : length;
    }

    private <T> @Nullable T taken(String field, Reading<T> reading) {
        reading.problem().ifPresent(problem -> trouble(field, "This " + problem + "."));
        return reading.found();
    }
}
