package dev.ledgerwing.core.review;

import org.jspecify.annotations.Nullable;

/** A figure that differs between two reviews; null = not known then. */
public record FigureChange(
        String name, @Nullable Double before, @Nullable Double after) {

    /** After minus before; null unless both are known. */
    public @Nullable Double change() {
        return before == null || after == null ? null : after - before;
    }
}
