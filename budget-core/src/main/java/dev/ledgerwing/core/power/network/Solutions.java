package dev.ledgerwing.core.power.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Everything a network is judged by, with nothing out of order.
 *
 * @param normal on every occasion, at every charge, at continuous and at peak load, with the feeds that carry in the ordinary way
 * @param every the same with every choice of feeds
 * @param idle on every occasion with every choice of feeds, all packs full and nothing drawn
 * @param isCutShort whether there were more choices than were looked at
 */
record Solutions(
        List<NetworkSolution> normal, List<NetworkSolution> every, List<NetworkSolution> idle, boolean isCutShort) {

    private static final List<LoadLevel> LEVELS = List.of(LoadLevel.CONTINUOUS, LoadLevel.PEAK);

    static Solutions of(PowerNetwork network) {
        List<NetworkCase> cases = network.occasions().stream().map(network::on).toList();
        List<NetworkSolution> normal = new ArrayList<>();
        List<NetworkSolution> every = new ArrayList<>();
        List<NetworkSolution> idle = new ArrayList<>();
        for (NetworkCase each : cases) {
            for (Charge charge : Charge.values()) {
                for (LoadLevel level : LEVELS) {
                    List<NetworkSolution> choices = each.every(charge, level);
                    every.addAll(choices);
                    normal.add(each.normal(choices));
                }
            }
            idle.addAll(each.every(Charge.FULL, LoadLevel.NONE));
        }
        return new Solutions(normal, every, idle, cases.stream().anyMatch(NetworkCase::isCutShort));
    }

    /** Loaded and idle together. */
    Stream<NetworkSolution> all() {
        return Stream.concat(every.stream(), idle.stream());
    }
}
