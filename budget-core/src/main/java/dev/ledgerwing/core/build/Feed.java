package dev.ledgerwing.core.build;

import java.util.List;

/**
 * The way from a source or a rail to a rail.
 *
 * @param from code of a source or of a rail
 * @param to code of a rail
 * @param elements what the current passes through, in its order
 */
public record Feed(String code, String name, String from, String to, List<FeedElement> elements) implements Element {

    public Feed {
        elements = List.copyOf(elements);
        Check.slug("code", code);
        Check.name("name", name);
        Check.slug("from", from);
        Check.slug("to", to);
        Check.require(!from.equals(to), "to must not be the rail that the feed comes from: a rail cannot feed itself");
        Check.within("elements", elements.size(), 0, 50);
    }

    @Override
    public String id() {
        return code;
    }
}
