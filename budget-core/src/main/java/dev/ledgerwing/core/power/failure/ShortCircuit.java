package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.Outage;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How far a short comes from a rail. Feed by feed back towards the sources it is stopped by the first fuse or breaker that it meets;
 * regulators and motor controllers are not trusted to stop it. Out of another leg, whose rail has another supply, it is also stopped by a
 * diode. What it reaches is shorted as well. Whether a source gives enough current to open a fuse is not looked at.
 *
 * @param clearings what opens, nearest first
 * @param sources codes of the sources it reaches; solar cells bear a short, and are not counted
 * @param rails codes of the rails it reaches, the first one included
 */
record ShortCircuit(List<Clearing> clearings, Set<String> sources, Set<String> rails) {

    static ShortCircuit at(PowerNetwork network, String rail) {
        Spread spread = new Spread(network);
        spread.from(rail);
        return spread.result();
    }

    Outage outage() {
        return new Outage(sources, Set.of(), rails, Set.of());
    }

    /** A short on its way. */
    private record Spread(PowerNetwork network, List<Clearing> clearings, Set<String> reached) {

        Spread(PowerNetwork network) {
            this(network, new ArrayList<>(), new LinkedHashSet<>());
        }

        void from(String rail) {
            Deque<String> open = new ArrayDeque<>(List.of(rail));
            while (!open.isEmpty()) {
                String node = open.remove();
                if (reached.add(node)) {
                    network.feedsInto(node).forEach(feed -> upTo(feed, open));
                    network.feedsFrom(node).stream()
                            .filter(this::hasAnotherSupply)
                            .forEach(feed -> downTo(feed, open));
                }
            }
        }

        private void upTo(Feed feed, Deque<String> open) {
            if (!isCleared(feed)) {
                open.add(feed.from());
            }
        }

        private boolean hasAnotherSupply(Feed feed) {
            return network.feedsInto(feed.to()).size() > 1;
        }

        private void downTo(Feed feed, Deque<String> open) {
            boolean hasDiode = feed.elements().stream().anyMatch(element -> element.kind() == FeedElement.Kind.DIODE);
            if (!hasDiode && !isCleared(feed)) {
                open.add(feed.to());
            }
        }

        private boolean isCleared(Feed feed) {
            Clearing clearing = clearing(feed);
            if (clearing != null && !clearings.contains(clearing)) {
                clearings.add(clearing);
            }
            return clearing != null;
        }

        private static @Nullable Clearing clearing(Feed feed) {
            for (int i = feed.elements().size() - 1; i >= 0; i--) {
                FeedElement.Kind kind = feed.elements().get(i).kind();
                if (kind == FeedElement.Kind.FUSE || kind == FeedElement.Kind.BREAKER) {
                    return new Clearing(feed, new ElementAt(feed.code(), i));
                }
            }
            return null;
        }

        ShortCircuit result() {
            Set<String> sources = new LinkedHashSet<>(reached);
            sources.removeIf(code -> network.source(code)
                    .filter(source -> source.kind() != PowerSource.Kind.SOLAR)
                    .isEmpty());
            Set<String> rails = new LinkedHashSet<>(reached);
            rails.removeIf(code -> network.rail(code).isEmpty());
            return new ShortCircuit(List.copyOf(clearings), sources, rails);
        }
    }
}
