package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A choice of carriers made into a forest.
 *
 * @param nodes of sources and rails in it, by their codes; what is not named is dark
 * @param loadNodes where each load of the network hangs; -1 where it is dark or on no rail
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Carried(Choice choice, Forest.Shape shape, Map<String, Integer> nodes, int[] loadNodes) {

    static Carried of(PowerNetwork network, Choice choice) {
        Forest forest = new Forest();
        Map<String, Integer> nodes = new HashMap<>();
        for (SourceModel model : network.models()) {
            nodes.put(model.source().code(), forest.addSource(model.innerOhm()));
        }
        for (Rail rail : network.ordered()) {
            Way way = choice.carrier(rail.code());
            Integer from = way == null ? null : nodes.get(way.feed().from());
            if (way != null && from != null) {
                nodes.put(rail.code(), forest.addWay(from, way));
            }
        }
        return new Carried(choice, forest.shape(), nodes, loadNodes(network, nodes));
    }

    private static int[] loadNodes(PowerNetwork network, Map<String, Integer> nodes) {
        return network.loads().stream()
                .map(load -> load.load().rail())
                .mapToInt(rail -> rail == null ? -1 : nodes.getOrDefault(rail, -1))
                .toArray();
    }

    NetworkSolution solve(NetworkCase situation, Drawn drawn) {
        PowerNetwork network = situation.network();
        double[] openV = new double[shape.size()];
        for (SourceModel model : network.models()) {
            PowerSource source = model.source();
            openV[node(source.code())] = model.gives() ? model.openV(drawn.charge()) : 0;
        }
        double[] constantA = new double[shape.size()];
        double[] constantW = new double[shape.size()];
        List<LoadModel> loads = network.loadModels();
        for (int i : network.summingOrder()) {
            int node = loadNodes[i];
            if (node >= 0 && loads.get(i).isConstantPower()) {
                constantW[node] += loads.get(i).load().watts(drawn.demandA()[i]);
            } else if (node >= 0) {
                constantA[node] += drawn.demandA()[i];
            }
        }
        Forest.Shape solved = drawn.losesInDiodes() ? shape : shape.withoutForward();
        ForestSolver solver = new ForestSolver(solved, openV, constantA, constantW).solve();
        return new NetworkSolution(situation, this, drawn, solver);
    }

    /** Where a source or rail is; -1 where it is dark or not named. */
    int node(@Nullable String code) {
        return code == null ? -1 : nodes.getOrDefault(code, -1);
    }
}
