package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where a part sits, as far as its row says. */
public record TableStation(
        @Nullable Length x, @Nullable Length y, @Nullable Length z) {

    static final TableStation NOT_GIVEN = new TableStation(null, null, null);

    /** Nothing without x; y and z that are not given lie on the centre line and at the height of the datum. */
    public Optional<Station> station() {
        return x == null ? Optional.empty() : Optional.of(new Station(x, orZero(y), orZero(z)));
    }

    boolean isPartial() {
        return x != null && (y == null || z == null);
    }

    boolean isWithoutX() {
        return x == null && (y != null || z != null);
    }

    private static Length orZero(@Nullable Length length) {
        return Objects.requireNonNullElse(length, Length.ZERO);
    }
}
