package dev.ledgerwing.core.quantity;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was made of something a person typed: a value, nothing (the field was empty), or a sentence saying what is wrong. */
public record Reading<T>(@Nullable T found, @Nullable String trouble) {

    public static <T> Reading<T> of(T value) {
        return new Reading<>(value, null);
    }

    public static <T> Reading<T> nothing() {
        return new Reading<>(null, null);
    }

    public static <T> Reading<T> wrong(String sentence) {
        return new Reading<>(null, sentence);
    }

    public Optional<T> value() {
        return Optional.ofNullable(found);
    }

    public Optional<String> problem() {
        return Optional.ofNullable(trouble);
    }
}
