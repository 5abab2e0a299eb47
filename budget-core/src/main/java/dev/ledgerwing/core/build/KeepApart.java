package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;

/**
 * Two parts that must not sit close to each other.
 *
 * @param first id of one line, {@code second} that of the other
 * @param atLeast between their boxes, or their stations where a part has no size
 */
public record KeepApart(String id, String name, String first, String second, Length atLeast) implements Element {

    public KeepApart {
        Check.id("id", id);
        Check.name("name", name);
        Check.id("first", first);
        Check.id("second", second);
        Check.extent("atLeastMm", atLeast);
        Check.require(!first.equals(second), "a part cannot be kept apart from itself");
    }
}
