package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Whether two supplies are tied together without a diode or a regulator in each: a failed one drags the other down. Solar cells are left
 * aside here.
 */
record BackFeedRule(NetworkStatement statement) {

    static final String BACK = "power.back-feed";

    Stream<Finding> findings() {
        return statement.rails().stream()
                .filter(RailState::isSolved)
                .map(this::of)
                .filter(Objects::nonNull);
    }

    private @Nullable Finding of(RailState rail) {
        List<String> open = rail.feeds().stream()
                .filter(feed -> !openSources(feed, new HashSet<>()).isEmpty())
                .map(Feed::name)
                .toList();
        Set<String> sources = new HashSet<>();
        rail.feeds().forEach(feed -> sources.addAll(sourcesOf(feed.from())));
        if (rail.feeds().size() < 2 || open.isEmpty() || sources.size() < 2) {
            return null;
        }
        return Against.nothing(BACK, rail.rail().name())
                .finding(
                        rail.rail().redundant() ? Verdict.BREAKS : Verdict.TIGHT,
                        "Nothing in " + PowerWords.names(open) + " stops current from flowing back out of "
                                + PowerWords.quoted(rail.rail().name())
                                + ": a failed source there drags the other down.",
                        "A diode in each feed.");
    }

    private Set<String> sourcesOf(String node) {
        Set<String> sources = new HashSet<>();
        statement.network().sources().stream()
                .filter(source -> source.kind() != PowerSource.Kind.SOLAR)
                .map(PowerSource::code)
                .filter(code -> code.equals(node)
                        || statement.network().railsReachedFrom(code).contains(node))
                .forEach(sources::add);
        return sources;
    }

    /** Sources that current could flow back into through a feed. */
    private Set<String> openSources(Feed feed, Set<String> open) {
        if (feed.elements().stream().anyMatch(BackFeedRule::isOneWay)) {
            return open;
        }
        statement
                .network()
                .source(feed.from())
                .filter(source -> source.kind() != PowerSource.Kind.SOLAR)
                .ifPresent(source -> open.add(source.code()));
        statement.network().feedsInto(feed.from()).forEach(upstream -> openSources(upstream, open));
        return open;
    }

    private static boolean isOneWay(FeedElement element) {
        return element.kind() == FeedElement.Kind.DIODE || element.kind() == FeedElement.Kind.REGULATOR;
    }
}
