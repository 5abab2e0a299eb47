package dev.ledgerwing.core.radio.plan;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A place that a search has been to, written as numbers: equal for equal numbers. */
final class Trodden {

    private final int[] numbers;

    private Trodden(int[] numbers) {
        this.numbers = numbers;
    }

    /** The same one for what is the same read from either end. */
    static Trodden ofEither(int[] up, int[] down) {
        return new Trodden(Arrays.compare(up, down) <= 0 ? up : down);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Trodden trodden && Arrays.equals(numbers, trodden.numbers);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(numbers);
    }
}
