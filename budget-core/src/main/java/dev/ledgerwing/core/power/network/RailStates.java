package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.RailState.Leg;
import dev.ledgerwing.core.power.network.RailState.RailVolts;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds how every rail stands. */
record RailStates(
        PowerNetwork network, Solutions solutions, Gaps gaps, List<ElementLoad> elements, List<LoadState> loads) {

    List<RailState> all() {
        return network.rails().stream().map(this::of).toList();
    }

    private RailState of(Rail rail) {
        String code = rail.code();
        List<Feed> feeds = network.feedsInto(code);
        boolean isSolved = !network.isUnsolved(code);
        return new RailState(
                rail,
                feeds,
                isSolved ? volts(rail) : List.of(),
                isSolved ? feeds.stream().flatMap(this::leg).toList() : List.of(),
                loads.stream()
                        .filter(each -> code.equals(each.load().load().rail()))
                        .toList(),
                most(at(LoadLevel.CONTINUOUS), each -> each.amperes(code)),
                most(at(LoadLevel.PEAK), each -> each.amperes(code)),
                network.highestV(code) > 0,
                isSolved,
                !gaps.currents().contains(code),
                heaviest(feeds),
                most(at(LoadLevel.CONTINUOUS), each -> wireDropV(each, code)));
    }

    private List<RailVolts> volts(Rail rail) {
        return Arrays.stream(Charge.values())
                .map(charge -> new RailVolts(
                        charge, lowestV(rail, charge, LoadLevel.CONTINUOUS), lowestV(rail, charge, LoadLevel.PEAK)))
                .toList();
    }

    private double lowestV(Rail rail, Charge charge, LoadLevel level) {
        return solutions.normal().stream()
                .filter(each -> each.charge() == charge && each.level() == level && isWanted(rail, each))
                .mapToDouble(each -> each.volts(rail.code()))
                .min()
                .orElse(0);
    }

    /** Where its supply stays at home and nothing on it runs, a rail may be dark. */
    private boolean isWanted(Rail rail, NetworkSolution solution) {
        return solution.carrier(rail.code()).isPresent()
                || network.loadsOn(rail.code()).stream()
                        .anyMatch(load -> solution.occasion().duty(load) > 0);
    }

    private Stream<Leg> leg(Feed feed) {
        List<NetworkSolution> loaded = chosen(feed, solutions.every());
        return loaded.isEmpty()
                ? Stream.empty()
                : Stream.of(new Leg(
                        feed,
                        loaded.stream()
                                .mapToDouble(each -> each.volts(feed.to()))
                                .min()
                                .orElse(0),
                        most(chosen(feed, solutions.idle()).stream(), each -> each.volts(feed.to()))));
    }

    private static List<NetworkSolution> chosen(Feed feed, List<NetworkSolution> solutions) {
        return solutions.stream()
                .filter(each -> each.carrier(feed.to()).filter(feed::equals).isPresent())
                .toList();
    }

    private Stream<NetworkSolution> at(LoadLevel level) {
        return solutions.every().stream().filter(each -> each.level() == level);
    }

    private static double most(Stream<NetworkSolution> solutions, ToDoubleFunction<NetworkSolution> figure) {
        return solutions.mapToDouble(figure).max().orElse(0);
    }

    private @Nullable ElementLoad heaviest(List<Feed> feeds) {
        return elements.stream()
                .filter(each -> feeds.contains(each.feed()) && each.loadPercent() != null)
                .max(Comparator.comparingDouble(RailStates::percent))
                .orElse(null);
    }

    private static double percent(ElementLoad element) {
        Double percent = element.loadPercent();
        return percent == null ? 0 : percent;
    }

    /** Lost in wires on the way to a rail since the last regulator, or since the source. */
    private static double wireDropV(NetworkSolution solution, String node) {
        Optional<Feed> carrier = solution.carrier(node).filter(solution::carries);
        if (carrier.isEmpty()) {
            return 0;
        }
        double drop = 0;
        List<ElementFlow> flows = solution.flows(carrier.get());
        for (int i = flows.size() - 1; i >= 0; i--) {
            FeedElement.Kind kind = flows.get(i).element().kind();
            if (kind == FeedElement.Kind.REGULATOR) {
                return drop;
            }
            drop += kind == FeedElement.Kind.WIRE ? flows.get(i).dropV() : 0;
        }
        return drop + wireDropV(solution, carrier.get().from());
    }
}
