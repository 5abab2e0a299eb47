package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Another way to the same voltages, for the test only: no equations, but sweeping to and fro until nothing changes, currents from the loads to
 * the sources and voltages back. Bench supplies, one of each element, loads without leads, no phases.
 *
 * @param gone codes of sources and rails that give nothing
 * @param open element that is open, as {@code feed#index}; empty = none
 */
record SweptSupply(Build build, Set<String> gone, String open) {

    private static final int SWEEPS = 3000;

    static SweptSupply whole(Build build) {
        return new SweptSupply(build, Set.of(), "");
    }

    /** What a short of one rail reaches: spreads until nothing changes. */
    static Set<String> shortedFrom(Build build, String rail) {
        Set<String> reached = new HashSet<>(Set.of(rail));
        int size = 0;
        while (size != reached.size()) {
            size = reached.size();
            for (Feed feed : build.power().feeds()) {
                boolean isFused = has(feed, FeedElement.Kind.FUSE) || has(feed, FeedElement.Kind.BREAKER);
                if (!isFused && reached.contains(feed.to())) {
                    reached.add(feed.from());
                }
                long legs = build.power().feeds().stream()
                        .filter(each -> each.to().equals(feed.to()))
                        .count();
                if (!isFused && !has(feed, FeedElement.Kind.DIODE) && legs > 1 && reached.contains(feed.from())) {
                    reached.add(feed.to());
                }
            }
        }
        return reached;
    }

    private static boolean has(Feed feed, FeedElement.Kind kind) {
        return feed.elements().stream().anyMatch(element -> element.kind() == kind);
    }

    /** Ids of the parts that have no voltage, or too little. */
    Set<String> dark(boolean isPeak) {
        Map<String, Double> volts = normal(isPeak);
        Set<String> dark = new TreeSet<>();
        for (PartLine line : build.lines()) {
            for (ElectricalLoad load : line.electrical()) {
                double atLoad = volts.getOrDefault(load.rail(), 0.0);
                Double minV = load.minV();
                if (atLoad <= 0 || (minV != null && atLoad < minV)) {
                    dark.add(line.id());
                }
            }
        }
        return dark;
    }

    /** Ids of the parts that no current can come to at all. */
    Set<String> unreached() {
        Map<String, List<Feed>> usable = usable();
        Set<String> dark = new TreeSet<>();
        build.lines().stream()
                .filter(line -> usable.getOrDefault(line.electrical().get(0).rail(), List.of())
                        .isEmpty())
                .forEach(line -> dark.add(line.id()));
        return dark;
    }

    private Map<String, Double> normal(boolean isPeak) {
        Map<String, List<Feed>> usable = usable();
        List<Map<String, Feed>> choices = new ArrayList<>(List.of(Map.of()));
        for (Rail rail : inward()) {
            List<Map<String, Feed>> longer = new ArrayList<>();
            for (Map<String, Feed> choice : choices) {
                for (Feed feed : usable.getOrDefault(rail.code(), List.of())) {
                    Map<String, Feed> more = new HashMap<>(choice);
                    more.put(rail.code(), feed);
                    longer.add(more);
                }
            }
            choices = longer.isEmpty() ? choices : longer;
        }
        List<Rail> several = inward().stream()
                .filter(rail -> usable.getOrDefault(rail.code(), List.of()).size() > 1)
                .toList();
        Map<String, Double> best = sweep(choices.get(0), isPeak);
        for (Map<String, Feed> choice : choices) {
            Map<String, Double> volts = sweep(choice, isPeak);
            if (isHigher(volts, best, several)) {
                best = volts;
            }
        }
        return best;
    }

    private static boolean isHigher(Map<String, Double> one, Map<String, Double> other, List<Rail> rails) {
        for (Rail rail : rails) {
            double more = one.getOrDefault(rail.code(), 0.0) - other.getOrDefault(rail.code(), 0.0);
            if (Math.abs(more) > 1e-9) {
                return more > 0;
            }
        }
        return false;
    }

    private Map<String, List<Feed>> usable() {
        Set<String> fed = new HashSet<>();
        build.power().sources().stream()
                .map(PowerSource::code)
                .filter(code -> !gone.contains(code))
                .forEach(fed::add);
        Map<String, List<Feed>> usable = new HashMap<>();
        for (Rail rail : inward()) {
            List<Feed> feeds = build.power().feeds().stream()
                    .filter(feed -> feed.to().equals(rail.code()) && fed.contains(feed.from()))
                    .filter(feed -> !open.startsWith(feed.code() + "#"))
                    .toList();
            if (!gone.contains(rail.code()) && !feeds.isEmpty()) {
                usable.put(rail.code(), feeds);
                fed.add(rail.code());
            }
        }
        return usable;
    }

    /** From the sources outwards. */
    private List<Rail> inward() {
        return build.power().rails().stream()
                .sorted(Comparator.comparingInt(rail -> depth(rail.code())))
                .toList();
    }

    private int depth(String node) {
        return build.power().feeds().stream()
                .filter(feed -> feed.to().equals(node))
                .mapToInt(feed -> 1 + depth(feed.from()))
                .max()
                .orElse(0);
    }

    /** Voltages with those feeds; where they sink to nothing, all that hangs on the same source has none. */
    private Map<String, Double> sweep(Map<String, Feed> choice, boolean isPeak) {
        Map<String, Double> volts = new HashMap<>();
        build.power().sources().forEach(source -> volts.put(source.code(), openV(source)));
        Map<String, Double> drawn = new HashMap<>();
        for (int i = 0; i < SWEEPS; i++) {
            Map<String, Double> before = Map.copyOf(volts);
            for (Rail rail : inward()) {
                Feed feed = choice.get(rail.code());
                double fromV = feed == null ? 0 : volts.getOrDefault(feed.from(), 0.0);
                volts.put(rail.code(), feed == null || fromV <= 0 ? 0 : behind(feed, fromV, drawn));
            }
            Set<String> sunk = i == 0 ? Set.of() : sunk(choice, volts, before);
            sunk.forEach(node -> volts.put(node, 0.0));
            draw(choice, volts, drawn, isPeak);
            if (volts.equals(before)) {
                return volts;
            }
        }
        throw new IllegalStateException("the sweeps do not settle");
    }

    /** Everything on a source of which one rail that stood sinks to nothing. */
    private Set<String> sunk(Map<String, Feed> choice, Map<String, Double> volts, Map<String, Double> before) {
        Set<String> roots = new HashSet<>();
        build.power().rails().stream()
                .filter(rail -> volts.getOrDefault(rail.code(), 0.0) <= 0 && before.getOrDefault(rail.code(), 0.0) > 0)
                .forEach(rail -> roots.add(root(choice, rail.code())));
        Set<String> sunk = new HashSet<>(roots);
        build.power().rails().stream()
                .filter(rail -> choice.containsKey(rail.code()) && roots.contains(root(choice, rail.code())))
                .forEach(rail -> sunk.add(rail.code()));
        return sunk;
    }

    private static String root(Map<String, Feed> choice, String node) {
        Feed feed = choice.get(node);
        return feed == null ? node : root(choice, feed.from());
    }

    private static double openV(PowerSource source) {
        Double volts = source.outputV();
        return volts == null ? 0 : volts;
    }

    /** Walks along a feed with the current that leaves it, element by element. */
    private static double behind(Feed feed, double fromV, Map<String, Double> drawn) {
        double volts = fromV;
        for (int i = 0; i < feed.elements().size(); i++) {
            double amperes = drawn.getOrDefault(feed.code() + "#" + i, 0.0);
            volts = behind(feed.elements().get(i), volts, amperes);
        }
        return Math.max(0, volts);
    }

    private static double behind(FeedElement element, double inV, double amperes) {
        Regulator regulator = element.regulator();
        Double milliohm = element.milliohm();
        Double forwardV = element.forwardV();
        if (regulator != null) {
            Double dropoutV = regulator.dropoutV();
            return Math.min(regulator.outputV(), inV - (dropoutV == null ? 0 : dropoutV));
        }
        return inV - (forwardV == null ? 0 : forwardV) - (milliohm == null ? 0 : milliohm / 1000 * amperes);
    }

    /** Currents out of every element, from the last rail back. */
    private void draw(Map<String, Feed> choice, Map<String, Double> volts, Map<String, Double> drawn, boolean isPeak) {
        Map<String, Double> taken = new HashMap<>();
        List<Rail> outward = new ArrayList<>(inward());
        Collections.reverse(outward);
        for (Rail rail : outward) {
            Feed feed = choice.get(rail.code());
            double railV = volts.getOrDefault(rail.code(), 0.0);
            if (feed == null || railV <= 0) {
                continue;
            }
            double amperes = loadsA(rail, railV, isPeak) + taken.getOrDefault(rail.code(), 0.0);
            for (int i = feed.elements().size() - 1; i >= 0; i--) {
                drawn.put(feed.code() + "#" + i, amperes);
                amperes = into(feed, i, amperes, volts, drawn);
            }
            taken.merge(feed.from(), amperes, Double::sum);
        }
    }

    private static double into(
            Feed feed, int index, double outA, Map<String, Double> volts, Map<String, Double> drawn) {
        Regulator regulator = feed.elements().get(index).regulator();
        if (regulator == null || regulator.type() == Regulator.Type.LINEAR) {
            return outA;
        }
        double inV = volts.getOrDefault(feed.from(), 0.0);
        for (int i = 0; i < index; i++) {
            inV = behind(feed.elements().get(i), inV, drawn.getOrDefault(feed.code() + "#" + i, 0.0));
        }
        Double percent = regulator.efficiencyPercent();
        return regulator.outputV() * outA / ((percent == null ? 100 : percent) / 100 * inV);
    }

    private double loadsA(Rail rail, double railV, boolean isPeak) {
        double sum = 0;
        for (PartLine line : build.lines()) {
            for (ElectricalLoad load : line.electrical()) {
                Double amperes = isPeak ? load.peakA() : load.typicalA();
                Double nominalV = rail.nominalV();
                boolean isPower = load.draws() == ElectricalLoad.Draws.CONSTANT_POWER;
                if (rail.code().equals(load.rail()) && amperes != null && nominalV != null) {
                    sum += line.quantity() * amperes * (isPower ? nominalV / railV : 1);
                }
            }
        }
        return sum;
    }
}
