package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A space in the airframe that some parts must stay inside.
 *
 * @param fromX its front, {@code toX} its back
 * @param fromY its left side, {@code toY} its right side; both null = not limited
 * @param fromZ its floor, {@code toZ} its ceiling; both null = not limited
 * @param holds ids of the lines that must stay inside
 */
public record Bay(
        String code,
        String name,
        Length fromX,
        Length toX,
        @Nullable Length fromY,
        @Nullable Length toY,
        @Nullable Length fromZ,
        @Nullable Length toZ,
        List<String> holds)
        implements Element {

    public Bay {
        holds = List.copyOf(holds);
        Check.slug("code", code);
        Check.name("name", name);
        range("X", fromX, toX);
        range("Y", fromY, toY);
        range("Z", fromZ, toZ);
    }

    private static void range(String axis, @Nullable Length from, @Nullable Length to) {
        Check.coordinate("from" + axis + "Mm", from);
        Check.coordinate("to" + axis + "Mm", to);
        Check.require((from == null) == (to == null), "a bay is limited on both sides along " + axis + " or on none");
        Check.require(
                from == null || to == null || from.compareTo(to) < 0,
                "from" + axis + "Mm must be less than to" + axis + "Mm");
    }

    @Override
    public String id() {
        return code;
    }

    public Bay withHolds(List<String> changed) {
        return new Bay(code, name, fromX, toX, fromY, toY, fromZ, toZ, changed);
    }
}
