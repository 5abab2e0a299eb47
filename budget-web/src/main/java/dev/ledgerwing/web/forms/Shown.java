package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The fields of a form as they show a record. Remembers the exact value behind each text: looking at millimetres in inches must
 * not round them.
 */
public final class Shown {

    private final Figures figures;
    private final Map<String, List<String>> texts = new HashMap<>();
    private final Map<String, Object> exact = new HashMap<>();

    public Shown(Figures figures) {
        this.figures = figures;
    }

    public Figures figures() {
        return figures;
    }

    public Shown text(String field, @Nullable String text) {
        texts.put(field, List.of(text == null ? "" : text));
        return this;
    }

    public Shown length(String field, @Nullable Length length) {
        return put(field, length, length == null ? "" : figures.exactLength(length));
    }

    public Shown mass(String field, @Nullable Mass mass) {
        return put(field, mass, mass == null ? "" : figures.exactMass(mass));
    }

    public Shown number(String field, @Nullable Double number) {
        return put(field, number, number == null ? "" : Figures.number(number, 4));
    }

    /** A figure that may be very small, as the current that a regulator draws itself. */
    public Shown amount(String field, @Nullable Double amount) {
        return put(field, amount, amount == null ? "" : Figures.number(amount, 6));
    }

    /** Hours since midnight, or ahead of universal time, as {@code 6:30}. */
    public Shown hours(String field, @Nullable Double hours) {
        return put(field, hours, hours == null ? "" : ClockText.hours(hours));
    }

    /** Three fields, {@code x}, {@code y} and {@code z} of {@code group}. */
    public Shown station(String group, @Nullable Station station) {
        return length(group + ".x", station == null ? null : station.x())
                .length(group + ".y", station == null ? null : station.y())
                .length(group + ".z", station == null ? null : station.z());
    }

    public Shown tick(String field, boolean ticked) {
        return ticked ? text(field, "on") : this;
    }

    public Shown ticks(String field, List<String> values) {
        if (!values.isEmpty()) {
            texts.put(field, List.copyOf(values));
        }
        return this;
    }

    private Shown put(String field, @Nullable Object value, String text) {
        if (value != null) {
            exact.put(field, value);
        }
        return text(field, text);
    }

    Typed typed() {
        return new Typed(texts);
    }

    /** The value behind a field that still says what it showed. */
    <T> Optional<T> exact(String field, String typed, Class<T> type) {
        boolean untouched = texts.getOrDefault(field, List.of()).equals(List.of(typed));
        return untouched
                ? Optional.ofNullable(exact.get(field)).filter(type::isInstance).map(type::cast)
                : Optional.empty();
    }
}
