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
        List<String> open =
                rail.feeds().stream().filter(this::isOpen).map(Feed::name).toList();
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

    /** Whether current could flow back through a feed into a source. */
    private boolean isOpen(Feed feed) {
        Set<String> reached = new HashSet<>();
        goBack(feed, reached);
        return statement.network().sources().stream()
                .anyMatch(source -> source.kind() != PowerSource.Kind.SOLAR && reached.contains(source.code()));
    }

    /** Each source and rail once: with two feeds into every rail there are more ways back than could ever be gone. */
    private void goBack(Feed feed, Set<String> reached) {
        if (feed.elements().stream().noneMatch(BackFeedRule::isOneWay) && reached.add(feed.from())) {
            statement.network().feedsInto(feed.from()).forEach(upstream -> goBack(upstream, reached));
        }
    }

    private static boolean isOneWay(FeedElement element) {
        return element.kind() == FeedElement.Kind.DIODE || element.kind() == FeedElement.Kind.REGULATOR;
    }
}
