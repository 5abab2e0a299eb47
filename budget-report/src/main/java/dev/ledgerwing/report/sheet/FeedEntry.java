package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.wire.WireGauge;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One feed in the table of ratings: its elements in the order of the current.
 *
 * @param way {@code from Flight pack to Motor}
 */
public record FeedEntry(String name, String way, List<ElementEntry> elements) {

    private static final String NOT_KNOWN = "not known";

    /**
     * One thing on the way.
     *
     * @param note what it is, and of a fuse the wire it protects
     */
    public record ElementEntry(
            String name,
            String note,
            String rating,
            String continuous,
            String peak,
            String load,
            String reserve,
            VerdictMark verdict) {}

    public FeedEntry {
        elements = List.copyOf(elements);
    }

    static List<FeedEntry> of(NetworkStatement network) {
        Build build = network.network().build();
        return build.power().feeds().stream().map(feed -> of(feed, network)).toList();
    }

    private static FeedEntry of(Feed feed, NetworkStatement network) {
        Build build = network.network().build();
        return new FeedEntry(
                feed.name(),
                "from " + nameOf(build, feed.from()) + " to " + nameOf(build, feed.to()),
                IntStream.range(0, feed.elements().size())
                        .mapToObj(index -> element(feed, index, network))
                        .toList());
    }

    private static String nameOf(Build build, String code) {
        Stream<String> sources = build.power().sources().stream()
                .filter(source -> source.code().equals(code))
                .map(PowerSource::name);
        Stream<String> rails = build.power().rails().stream()
                .filter(rail -> rail.code().equals(code))
                .map(Rail::name);
        return Stream.concat(sources, rails).findFirst().orElse(code);
    }

    private static ElementEntry element(Feed feed, int index, NetworkStatement network) {
        FeedElement element = feed.elements().get(index);
        String count = element.count() == 1 ? "" : element.count() + " × ";
        return network.element(new ElementAt(feed.code(), index))
                .map(load -> element(count, element, load))
                .orElseGet(() -> new ElementEntry(
                        count + element.name(),
                        note(feed, index),
                        amperes(element.ratingA()),
                        NOT_KNOWN,
                        NOT_KNOWN,
                        NOT_KNOWN,
                        "",
                        VerdictMark.of(Verdict.UNKNOWN)));
    }

    private static ElementEntry element(String count, FeedElement element, ElementLoad load) {
        Double percent = load.loadPercent();
        String least = load.isWhole() ? "" : "at least ";
        return new ElementEntry(
                count + element.name(),
                note(load.feed(), load.at().index()),
                rating(load),
                load.isCarrying() ? least + PowerWords.amperes(load.continuousA()) : NOT_KNOWN,
                load.isCarrying() ? least + PowerWords.amperes(load.peakA()) : NOT_KNOWN,
                percent == null ? NOT_KNOWN : Figures.percent(percent),
                Figures.percent(load.reservePercent()),
                VerdictMark.of(load.verdict()));
    }

    /** {@code 4 A}; {@code 4 A, peak 6 A} where it may carry more for moments. */
    private static String rating(ElementLoad load) {
        Double continuous = load.rating().continuousA();
        Double peak = load.rating().peakA();
        return continuous == null || peak == null || peak.equals(continuous)
                ? amperes(continuous)
                : PowerWords.amperes(continuous) + ", peak " + PowerWords.amperes(peak);
    }

    private static String note(Feed feed, int index) {
        FeedElement element = feed.elements().get(index);
        String kind = PowerWords.word(element.kind());
        WireRun run = element.wire();
        if (run != null) {
            return kind + ", " + WireGauge.of(run.awg()).label();
        }
        return isProtector(element) ? kind + protects(feed, index) : kind;
    }

    private static boolean isProtector(FeedElement element) {
        return element.kind() == Kind.FUSE || element.kind() == Kind.BREAKER;
    }

    /** The wires behind it in its own feed, up to the next fuse, breaker or regulator. */
    private static String protects(Feed feed, int index) {
        List<String> wires = feed.elements().stream()
                .skip(index + 1)
                .takeWhile(element -> !isProtector(element) && element.kind() != Kind.REGULATOR)
                .filter(element -> element.wire() != null)
                .map(FeedElement::name)
                .toList();
        return wires.isEmpty() ? "" : ", protects " + PowerWords.names(wires);
    }

    private static String amperes(@Nullable Double amperes) {
        return amperes == null ? NOT_KNOWN : PowerWords.amperes(amperes);
    }
}
