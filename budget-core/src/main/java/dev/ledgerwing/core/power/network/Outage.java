package dev.ledgerwing.core.power.network;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is out of order. Of several elements side by side, one is gone and the others carry on.
 *
 * @param sources codes of sources that give nothing
 * @param feeds codes of feeds that carry nothing
 * @param rails codes of rails that carry nothing, and pass nothing on
 * @param elements elements that have failed open
 */
public record Outage(Set<String> sources, Set<String> feeds, Set<String> rails, Set<ElementAt> elements) {

    public static final Outage NONE = new Outage(Set.of(), Set.of(), Set.of(), Set.of());

    public Outage {
        sources = Set.copyOf(sources);
        feeds = Set.copyOf(feeds);
        rails = Set.copyOf(rails);
        elements = Set.copyOf(elements);
    }

    public static Outage ofSource(String code) {
        return new Outage(Set.of(code), Set.of(), Set.of(), Set.of());
    }

    public static Outage ofFeed(String code) {
        return new Outage(Set.of(), Set.of(code), Set.of(), Set.of());
    }

    public static Outage ofRail(String code) {
        return new Outage(Set.of(), Set.of(), Set.of(code), Set.of());
    }

    public static Outage ofElement(ElementAt at) {
        return new Outage(Set.of(), Set.of(), Set.of(), Set.of(at));
    }

    /** Both at once. */
    public Outage and(Outage other) {
        return new Outage(
                union(sources, other.sources),
                union(feeds, other.feeds),
                union(rails, other.rails),
                union(elements, other.elements));
    }

    private static <T> Set<T> union(Set<T> some, Set<T> more) {
        return Stream.concat(some.stream(), more.stream()).collect(Collectors.toSet());
    }
}
