package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What hangs on what.
 *
 * @param waves rails that are in no loop and behind none: first those fed by sources alone, then those that need these as well, and so on;
 *     within a wave in the order of the record
 * @param looped rails that are fed by themselves round about
 * @param behindLoops rails that are not in a loop, but fed from one
 * @param loads of every line, in the order of the record; also those that hang on no rail
 */
record Topology(
        List<PowerSource> sources,
        List<List<Rail>> waves,
        List<Rail> looped,
        List<Rail> behindLoops,
        List<Feed> feeds,
        List<RailLoad> loads) {

    static Topology of(Build build) {
        Power power = build.power();
        List<List<Rail>> waves = waves(power);
        List<Rail> rest = new ArrayList<>(power.rails());
        waves.forEach(rest::removeAll);
        List<Rail> looped = rest.stream()
                .filter(rail -> reaches(rail.code(), rail.code(), power.feeds()))
                .toList();
        rest.removeAll(looped);
        return new Topology(power.sources(), waves, looped, List.copyOf(rest), power.feeds(), loads(build));
    }

    private static List<List<Rail>> waves(Power power) {
        List<List<Rail>> waves = new ArrayList<>();
        Set<String> placed = new HashSet<>();
        List<Rail> waiting = new ArrayList<>(power.rails());
        Set<String> rails = new HashSet<>(waiting.stream().map(Rail::code).toList());
        boolean isMoving = true;
        while (isMoving) {
            List<Rail> ready = waiting.stream()
                    .filter(rail -> power.feeds().stream()
                            .filter(feed -> feed.to().equals(rail.code()))
                            .allMatch(feed -> !rails.contains(feed.from()) || placed.contains(feed.from())))
                    .toList();
            if (!ready.isEmpty()) {
                waves.add(ready);
            }
            ready.forEach(rail -> placed.add(rail.code()));
            waiting.removeAll(ready);
            isMoving = !ready.isEmpty();
        }
        return waves;
    }

    /** Each after all that it is fed from. */
    List<Rail> ordered() {
        return waves.stream().flatMap(List::stream).toList();
    }

    /** From the sources outwards, in an order that does not depend on the record's. */
    List<String> compared() {
        return waves.stream()
                .flatMap(wave -> wave.stream().map(Rail::code).sorted())
                .toList();
    }

    private static boolean reaches(String from, String to, List<Feed> feeds) {
        return reached(from, feeds).contains(to);
    }

    /** Every rail that current from a node may come to. */
    static Set<String> reached(String from, List<Feed> feeds) {
        Set<String> reached = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            String node = open.remove(open.size() - 1);
            feeds.stream()
                    .filter(feed -> feed.from().equals(node))
                    .map(Feed::to)
                    .filter(reached::add)
                    .forEach(open::add);
        }
        return reached;
    }

    private static List<RailLoad> loads(Build build) {
        Map<String, Rail> rails = new HashMap<>();
        build.power().rails().forEach(rail -> rails.put(rail.code(), rail));
        List<RailLoad> loads = new ArrayList<>();
        for (PartLine line : build.lines()) {
            for (int i = 0; i < line.electrical().size(); i++) {
                ElectricalLoad load = line.electrical().get(i);
                loads.add(new RailLoad(line, i, load.rail() == null ? null : rails.get(load.rail())));
            }
        }
        return loads;
    }
}
