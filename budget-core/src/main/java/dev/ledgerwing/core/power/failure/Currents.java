package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.power.network.Charge;
import dev.ledgerwing.core.power.network.ElementFlow;
import dev.ledgerwing.core.power.network.LoadLevel;
import dev.ledgerwing.core.power.network.NetworkCase;
import dev.ledgerwing.core.power.network.NetworkSolution;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.HashMap;
import java.util.Map;

/**
 * What everything carries on one occasion with empty packs, where constant power draws most.
 *
 * @param continuousA by what carries it: an element's place, or a source's code
 * @param peakA the same at peak load
 */
record Currents(Map<Object, Double> continuousA, Map<Object, Double> peakA) {

    /** @param lowest the same occasion with empty packs at peak load */
    static Currents in(NetworkCase occasion, Situation lowest) {
        PowerNetwork network = occasion.network();
        return new Currents(
                in(network, occasion.normal(Charge.EMPTY, LoadLevel.CONTINUOUS)), in(network, lowest.solution()));
    }

    private static Map<Object, Double> in(PowerNetwork network, NetworkSolution solution) {
        Map<Object, Double> amperes = new HashMap<>();
        network.sources().forEach(source -> amperes.put(source.code(), solution.amperes(source.code())));
        for (Feed feed : network.feeds()) {
            for (ElementFlow flow : solution.flows(feed)) {
                amperes.put(flow.at(), flow.ofOneA());
            }
        }
        return amperes;
    }
}
