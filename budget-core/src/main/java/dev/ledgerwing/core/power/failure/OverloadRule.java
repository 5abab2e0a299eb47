package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What carries more than it may only once something has failed; one finding for each, at its worst. On the way to a redundant rail it
 * breaks, for that must bear the failure.
 */
record OverloadRule(FailureTable table) {

    /** An overload and the failure that brings it. */
    private record Seen(Failure failure, Overload overload) {

        double share() {
            return overload.afterA() / overload.ratingA();
        }

        Object key() {
            ElementAt at = overload.at();
            return at == null ? overload.code() : at;
        }
    }

    Stream<Finding> findings() {
        Map<Object, List<Seen>> each = table.rows().stream()
                .flatMap(row -> row.overloads().stream().map(overload -> new Seen(row.failure(), overload)))
                .filter(seen -> seen.overload().isNew())
                .collect(Collectors.groupingBy(Seen::key, LinkedHashMap::new, Collectors.toList()));
        return each.values().stream()
                .flatMap(seen -> seen.stream().max(Comparator.comparingDouble(Seen::share)).stream())
                .map(this::finding);
    }

    private Finding finding(Seen seen) {
        Overload overload = seen.overload();
        String sentence = seen.failure().words() + ": " + PowerWords.quoted(overload.name()) + " must then carry "
                + PowerWords.amperes(overload.afterA()) + (overload.isPeak() ? " at peak" : "") + ", rated "
                + PowerWords.amperes(overload.ratingA()) + ".";
        return FailureFindings.amperes(feedsRedundant(overload) ? Verdict.BREAKS : Verdict.TIGHT, overload, sentence);
    }

    private boolean feedsRedundant(Overload overload) {
        PowerNetwork network = table.statement().network();
        String node = overload.at() == null
                ? overload.code()
                : network.feed(overload.code()).map(Feed::to).orElse(overload.code());
        return Stream.concat(Stream.of(node), network.railsReachedFrom(node).stream())
                .flatMap(code -> network.rail(code).stream())
                .anyMatch(Rail::redundant);
    }
}
