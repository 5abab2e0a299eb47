package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The network on one occasion, with nothing or something out of order: every choice of the feeds that carry its rails, ready to be
 * solved.
 */
public final class NetworkCase {

    /** Nearer together than this, voltages count as equal. */
    private static final double SAME_V = 1e-9;

    private final PowerNetwork network;
    private final Occasion occasion;
    private final Map<String, List<Way>> usable;
    private final List<Carried> choices;

    private NetworkCase(PowerNetwork network, Occasion occasion, Map<String, List<Way>> usable, List<Carried> choices) {
        this.network = network;
        this.occasion = occasion;
        this.usable = usable;
        this.choices = choices;
    }

    static NetworkCase of(PowerNetwork network, Occasion occasion, Outage outage) {
        Set<String> fed = new HashSet<>();
        network.models().stream()
                .filter(SourceModel::gives)
                .map(SourceModel::source)
                .filter(occasion::isAboard)
                .filter(source -> !outage.sources().contains(source.code()))
                .forEach(source -> fed.add(source.code()));
        Map<String, List<Way>> usable = new LinkedHashMap<>();
        for (Rail rail : network.ordered()) {
            List<Way> ways = outage.rails().contains(rail.code()) ? List.of() : ways(network, rail, fed, outage);
            usable.put(rail.code(), ways);
            if (!ways.isEmpty()) {
                fed.add(rail.code());
            }
        }
        List<Carried> choices = Choice.all(usable, network.mostChoices()).stream()
                .map(choice -> Carried.of(network, choice))
                .toList();
        return new NetworkCase(network, occasion, usable, choices);
    }

    /** Whether the same sources are aboard on another occasion, so that {@link #at} may be asked for it. */
    public boolean hasSourcesOf(Occasion other) {
        return network.sources().stream().allMatch(source -> occasion.isAboard(source) == other.isAboard(source));
    }

    /** The same on another occasion with the same sources aboard; there is nothing to find out anew. */
    public NetworkCase at(Occasion other) {
        return new NetworkCase(network, other, usable, choices);
    }

    private static List<Way> ways(PowerNetwork network, Rail rail, Set<String> fed, Outage outage) {
        return network.feedsInto(rail.code()).stream()
                .filter(feed -> fed.contains(feed.from()) && !outage.feeds().contains(feed.code()))
                .flatMap(feed -> network.way(feed.code()).stream())
                .map(way -> way.without(outage.elements()))
                .filter(Objects::nonNull)
                .toList();
    }

    public PowerNetwork network() {
        return network;
    }

    public Occasion occasion() {
        return occasion;
    }

    /** Feeds that can carry a rail, in the order of the record. */
    public List<Feed> usableFeeds(String rail) {
        return usable.getOrDefault(rail, List.of()).stream().map(Way::feed).toList();
    }

    /** Whether there were too many choices to look at each. */
    public boolean isCutShort() {
        return Choice.isTooMany(usable, network.mostChoices());
    }

    /**
     * What is there in the ordinary way: of all choices the one with the highest voltage at the rails with several feeds, compared from the
     * sources outwards; among equals the one with the earlier feeds.
     */
    public NetworkSolution normal(Charge charge, LoadLevel level) {
        return normal(every(charge, level));
    }

    NetworkSolution normal(List<NetworkSolution> all) {
        NetworkSolution best = all.get(0);
        for (NetworkSolution each : all) {
            if (isHigher(each, best)) {
                best = each;
            }
        }
        return best;
    }

    private boolean isHigher(NetworkSolution one, NetworkSolution other) {
        for (String rail : network.compared()) {
            double more = one.volts(rail) - other.volts(rail);
            if (usable.getOrDefault(rail, List.of()).size() > 1 && Math.abs(more) > SAME_V) {
                return more > 0;
            }
        }
        return false;
    }

    /** The solution of every choice: each feed of a rail with several carries it alone. */
    public List<NetworkSolution> every(Charge charge, LoadLevel level) {
        double[] demandA = network.demand(occasion, level);
        List<NetworkSolution> solutions = new ArrayList<>(choices.size());
        for (Carried carried : choices) {
            solutions.add(carried.solve(this, new Drawn(charge, level, demandA)));
        }
        return solutions;
    }
}
