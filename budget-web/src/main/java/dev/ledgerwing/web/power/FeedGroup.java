package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.ElementRating;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One feed with its elements in their order.
 *
 * @param way from where to where, in words
 * @param hasWire whether a wire is among them; without one nobody judges what its wires lose and how warm they get
 */
record FeedGroup(String code, String name, String way, List<Row> rows, boolean hasWire) {

    /** Volts or watts below which nobody wants the figure. */
    private static final double LEAST = 0.01;

    /** Whether there is nothing in it to look at first: every element holds, and the wires are judged. */
    boolean holds() {
        return hasWire && rows.stream().allMatch(row -> row.verdict() == Verdict.HOLDS);
    }

    /**
     * One element, load against rating.
     *
     * @param rating as it is held against the load, and {@code basis} where that is from
     * @param load of one, where several lie side by side
     * @param free of the rating, less than 0 where it is exceeded
     * @param reserve the share that must stay free
     */
    record Row(
            String name,
            String note,
            String rating,
            String basis,
            String load,
            String when,
            String free,
            String reserve,
            String loss,
            Verdict verdict) {}

    /** In the order of the record. */
    static List<FeedGroup> of(NetworkStatement network, Figures figures) {
        return network.network().build().power().feeds().stream()
                .map(feed -> group(feed, network, new ElementWords(figures)))
                .toList();
    }

    private static FeedGroup group(Feed feed, NetworkStatement network, ElementWords words) {
        return new FeedGroup(
                feed.code(),
                feed.name(),
                name(feed.from(), network.network()) + " to " + name(feed.to(), network.network()),
                network.elementsOf(feed.code()).stream()
                        .map(load -> row(load, words))
                        .toList(),
                feed.elements().stream().anyMatch(element -> element.kind() == FeedElement.Kind.WIRE));
    }

    private static String name(String code, PowerNetwork network) {
        return network.source(code)
                .map(source -> source.name())
                .or(() -> network.rail(code).map(rail -> rail.name()))
                .orElse(code);
    }

    private static Row row(ElementLoad load, ElementWords words) {
        boolean flows = load.isCarrying();
        return new Row(
                load.name(),
                words.element(load.element()),
                rating(load.rating()),
                load.rating().words(),
                flows
                        ? Electric.atLeast(load.isWhole(), currents(load.continuousA(), load.peakA()))
                        : Electric.NOT_KNOWN,
                load.when(),
                Electric.free(load.marginPercent()),
                Figures.percent(load.reservePercent()),
                flows ? loss(load) : "",
                load.verdict());
    }

    /** A wire takes its time to warm up: where nothing else is recorded, moments do not count against it. */
    private static String rating(ElementRating rating) {
        return rating.isSteady()
                ? Electric.amperes(rating.continuousA())
                : currents(rating.continuousA(), rating.peakA());
    }

    /** A regulator is there to lower the voltage, so that is no drop to speak of. */
    private static String loss(ElementLoad load) {
        boolean cool = load.heatW() < LEAST;
        String heat = cool ? "under " + Electric.watts(LEAST) : Electric.watts(load.heatW());
        if (load.element().regulator() != null) {
            return heat;
        }
        boolean level = load.dropV() < LEAST;
        if (cool && level) {
            return "hardly any";
        }
        return (level ? "under " + Electric.volts(LEAST) : Electric.volts(load.dropV())) + ", " + heat;
    }

    /** {@code 3 A, peak 6 A}; once where both are the same. */
    private static String currents(@Nullable Double continuousA, @Nullable Double peakA) {
        String continuous = Electric.amperes(continuousA);
        String peak = Electric.amperes(peakA);
        return continuous.equals(peak) ? continuous : continuous + ", peak " + peak;
    }
}
