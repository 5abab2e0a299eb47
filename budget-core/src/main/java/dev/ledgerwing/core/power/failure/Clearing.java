package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.power.network.ElementAt;

/** A fuse or breaker that opens and so keeps a short away from what is behind it. */
public record Clearing(Feed feed, ElementAt at) {

    public FeedElement element() {
        return feed.elements().get(at.index());
    }
}
