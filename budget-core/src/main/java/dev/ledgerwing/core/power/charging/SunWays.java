package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerSource;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the packs that one array reaches: along its feeds, and from the rails there against the arrow of the feeds that packs supply
 * them by. With the arrow a diode lets current through, against it nothing but bare copper and contacts does.
 */
final class SunWays {

    private static final Set<Kind> STOP_WITH_THE_ARROW = EnumSet.of(Kind.REGULATOR, Kind.MOTOR_CONTROLLER);
    private static final Set<Kind> STOP_AGAINST_IT = EnumSet.of(Kind.REGULATOR, Kind.MOTOR_CONTROLLER, Kind.DIODE);

    private final Power power;
    private final PowerSource cells;
    private final Map<String, ChargeWay> byPack = new LinkedHashMap<>();
    private final Set<Visit> seen = new HashSet<>();

    /** A rail that was come to, freely or past something that is in the way. */
    private record Visit(String rail, boolean open) {}

    private SunWays(Power power, PowerSource cells) {
        this.power = power;
        this.cells = cells;
    }

    /** One way for each pack that is reached, or would be if nothing was in the way; an open one where there is one. */
    static List<ChargeWay> of(Power power, PowerSource cells) {
        SunWays search = new SunWays(power, cells);
        search.onward(cells.code(), List.of(), null);
        return List.copyOf(search.byPack.values());
    }

    private void onward(String from, List<Feed> way, @Nullable FeedElement inTheWay) {
        power.feeds().stream()
                .filter(feed -> feed.from().equals(from) && !way.contains(feed))
                .forEach(feed -> arrive(
                        feed.to(), longer(way, feed), inTheWay == null ? first(feed, STOP_WITH_THE_ARROW) : inTheWay));
    }

    private void arrive(String rail, List<Feed> way, @Nullable FeedElement inTheWay) {
        if (!seen.add(new Visit(rail, inTheWay == null))) {
            return;
        }
        power.feeds().stream()
                .filter(feed -> feed.to().equals(rail) && !way.contains(feed))
                .forEach(feed -> back(feed, way, inTheWay == null ? first(feed, STOP_AGAINST_IT) : inTheWay));
        onward(rail, way, inTheWay);
    }

    private void back(Feed feed, List<Feed> way, @Nullable FeedElement inTheWay) {
        power.sources().stream()
                .filter(source -> source.code().equals(feed.from()))
                .findFirst()
                .ifPresentOrElse(
                        source -> meet(source, longer(way, feed), inTheWay),
                        () -> arrive(feed.from(), longer(way, feed), inTheWay));
    }

    private void meet(PowerSource source, List<Feed> way, @Nullable FeedElement inTheWay) {
        if (source.kind() == PowerSource.Kind.BATTERY) {
            byPack.merge(
                    source.code(),
                    new ChargeWay(cells, source, way, inTheWay),
                    (known, other) -> known.isOpen() || !other.isOpen() ? known : other);
        }
    }

    private static @Nullable FeedElement first(Feed feed, Set<Kind> kinds) {
        return feed.elements().stream()
                .filter(element -> kinds.contains(element.kind()))
                .findFirst()
                .orElse(null);
    }

    private static List<Feed> longer(List<Feed> way, Feed feed) {
        return Stream.concat(way.stream(), Stream.of(feed)).toList();
    }
}
