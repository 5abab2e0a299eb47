package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Regulator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Finds the worst that every element has to bear. */
record ElementLoads(PowerNetwork network, Solutions solutions, Gaps gaps) {

    /** An element as one solution has it. */
    private record Seen(NetworkSolution solution, ElementFlow flow) {

        boolean isAt(LoadLevel level) {
            return solution.level() == level;
        }

        String when() {
            return solution.occasion().name() + ", packs " + solution.charge().word();
        }
    }

    /** Feed by feed, in the order of the rails and of the record. */
    List<ElementLoad> all() {
        return network.rails().stream()
                .flatMap(rail -> network.feedsInto(rail.code()).stream())
                .flatMap(this::of)
                .toList();
    }

    private Stream<ElementLoad> of(Feed feed) {
        if (isSolar(feed)) {
            return new SolarFeed(network, feed).elements();
        }
        List<List<Seen>> seen = new ArrayList<>();
        feed.elements().forEach(element -> seen.add(new ArrayList<>()));
        solutions.all().forEach(solution -> {
            for (ElementFlow flow : solution.flows(feed)) {
                seen.get(flow.at().index()).add(new Seen(solution, flow));
            }
        });
        return network.placed(feed).stream()
                .map(placed -> of(feed, placed, seen.get(placed.at().index())));
    }

    private boolean isSolar(Feed feed) {
        return network.source(feed.from())
                .filter(source -> source.kind() == PowerSource.Kind.SOLAR)
                .isPresent();
    }

    private ElementLoad of(Feed feed, PlacedElement placed, List<Seen> seen) {
        FeedElement element = placed.element();
        List<Seen> continuous =
                seen.stream().filter(each -> each.isAt(LoadLevel.CONTINUOUS)).toList();
        List<Seen> peak =
                seen.stream().filter(each -> each.isAt(LoadLevel.PEAK)).toList();
        Regulator regulator = element.regulator();
        ElementRating rating = ElementRating.of(element, placed.highestInputV());
        return new ElementLoad(
                feed,
                placed.at(),
                most(continuous, each -> each.flow().ofOneA()),
                most(peak, each -> each.flow().ofOneA()),
                rating,
                network.build().power().rules().reserve(element.kind()),
                !gaps.currents().contains(feed.to()),
                !continuous.isEmpty(),
                most(continuous, each -> each.flow().dropV()),
                most(continuous, each -> each.flow().heatW()),
                seen.stream().mapToDouble(each -> each.flow().inV()).min().orElse(0),
                most(seen, each -> each.flow().inV()),
                regulator == null ? 0 : Conversion.leastInputV(regulator, placed.highestInputV()),
                (rating.isSteady() ? continuous : peak)
                        .stream()
                                .max(Comparator.comparingDouble(
                                        each -> each.flow().outA()))
                                .map(Seen::when)
                                .orElse(""));
    }

    private static double most(List<Seen> seen, ToDoubleFunction<Seen> figure) {
        return seen.stream().mapToDouble(figure).max().orElse(0);
    }
}
