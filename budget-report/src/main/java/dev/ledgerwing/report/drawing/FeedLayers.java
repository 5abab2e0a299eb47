package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.PowerView.FeedMark;
import dev.ledgerwing.report.drawing.PowerView.RailMark;
import dev.ledgerwing.report.drawing.PowerView.SourceMark;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How far from the sources each rail lies: one more than the furthest that feeds it. Sources are layer 0; a rail that nothing feeds
 * lies in layer 1. A feed that leads back to where its current came from does not count.
 */
final class FeedLayers {

    private final PowerView view;
    private final Set<FeedMark> backward = new HashSet<>();
    private final Map<String, Integer> layers = new HashMap<>();

    FeedLayers(PowerView view) {
        this.view = view;
        Set<String> seen = new HashSet<>();
        Stream.concat(
                        view.sources().stream().map(SourceMark::code),
                        view.rails().stream().map(RailMark::code))
                .forEach(code -> follow(code, seen, new HashSet<>()));
        view.sources().forEach(source -> layers.put(source.code(), 0));
        view.rails().forEach(rail -> layer(rail.code()));
    }

    private void follow(String code, Set<String> seen, Set<String> onTheWay) {
        if (!seen.add(code)) {
            return;
        }
        onTheWay.add(code);
        for (FeedMark feed : view.from(code)) {
            if (onTheWay.contains(feed.to())) {
                backward.add(feed);
            } else {
                follow(feed.to(), seen, onTheWay);
            }
        }
        onTheWay.remove(code);
    }

    private int layer(String code) {
        Integer known = layers.get(code);
        if (known != null) {
            return known;
        }
        List<FeedMark> feeds =
                view.to(code).stream().filter(feed -> !isBackward(feed)).toList();
        int layer = 1
                + feeds.stream().map(FeedMark::from).mapToInt(this::layer).max().orElse(0);
        layers.put(code, layer);
        return layer;
    }

    int of(String code) {
        return layers.getOrDefault(code, 0);
    }

    /** The last layer: at least one. */
    int last() {
        return layers.values().stream().mapToInt(Integer::intValue).max().orElse(1);
    }

    /** Whether a feed leads back to where the current came from. */
    boolean isBackward(FeedMark feed) {
        return backward.contains(feed);
    }

    /** How many elements the longest feed has that starts in a layer. */
    int longest(int layer) {
        return view.feeds().stream()
                .filter(feed -> of(feed.from()) == layer)
                .mapToInt(feed -> feed.elements().size())
                .max()
                .orElse(0);
    }
}
