package dev.ledgerwing.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a part comes from. {@code costEach} is in the team's own money. */
public record Supply(
        @Nullable String partCode,
        List<String> serials,
        @Nullable String supplier,
        @Nullable Double costEach) implements FieldGroup {

    public static final Supply NONE = new Supply(null, List.of(), null, null);

    public Supply {
        serials = List.copyOf(serials);
        Check.text("partCode", partCode, 80);
        Check.text("supplier", supplier, 200);
        Check.within("costEach", costEach, 0, 1e9, "");
        serials.forEach(serial -> Check.text("serials", serial, 80));
    }
}
