package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioLink;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** A graph of what cannot be together, which is made into demands. Vertices are counted from 0. */
record Graph(int vertices, List<int[]> edges) {

    /** Squares of a board, joined where a queen goes from one to the other. */
    static Graph queens(int n) {
        List<int[]> edges = new ArrayList<>();
        for (int a = 0; a < n * n; a++) {
            for (int b = a + 1; b < n * n; b++) {
                int rows = b / n - a / n;
                int columns = Math.abs(b % n - a % n);
                if (rows == 0 || columns == 0 || rows == columns) {
                    edges.add(new int[] {a, b});
                }
            }
        }
        return new Graph(n * n, edges);
    }

    /** From one edge: every vertex is copied to the neighbours of the original, and one more is joined to the copies. */
    static Graph mycielski(int steps) {
        Graph graph = new Graph(2, List.of(new int[] {0, 1}));
        for (int step = 0; step < steps; step++) {
            int n = graph.vertices;
            List<int[]> edges = new ArrayList<>(graph.edges);
            for (int[] edge : graph.edges) {
                edges.add(new int[] {edge[0] + n, edge[1]});
                edges.add(new int[] {edge[0], edge[1] + n});
            }
            for (int v = 0; v < n; v++) {
                edges.add(new int[] {v + n, 2 * n});
            }
            graph = new Graph(2 * n + 1, edges);
        }
        return graph;
    }

    /** Joined are those that are not among the compatible pairs, such as "1-2". */
    static Graph ofStrangers(List<String> vertices, String compatible) {
        List<String> pairs = List.of(compatible.split(" "));
        List<int[]> edges = new ArrayList<>();
        for (int a = 0; a < vertices.size(); a++) {
            for (int b = a + 1; b < vertices.size(); b++) {
                if (!pairs.contains(vertices.get(a) + "-" + vertices.get(b))) {
                    edges.add(new int[] {a, b});
                }
            }
        }
        return new Graph(vertices.size(), edges);
    }

    /** A function for every vertex, and for every edge a phase that demands both of its functions in both states. */
    ChannelProblem asFunctions() {
        List<Map<String, Demand>> demands = new ArrayList<>();
        IntStream.range(0, vertices).forEach(v -> demands.add(new TreeMap<>()));
        List<String> phases = new ArrayList<>();
        for (int[] edge : edges) {
            String phase = "edge-" + edge[0] + "-" + edge[1];
            phases.add(phase);
            demands.get(edge[0]).put(phase, Demand.select("off", "on"));
            demands.get(edge[1]).put(phase, Demand.select("off", "on"));
        }
        List<RadioFunction> functions = IntStream.range(0, vertices)
                .mapToObj(v -> Radios.switched("v" + v, DecodedBy.TABLE, demands.get(v)))
                .toList();
        return Radios.problem(
                RadioLink.of(32), Radios.switches(32, 2), functions, Radios.phases(phases.toArray(new String[0])));
    }

    /** A phase for every vertex, and for every edge a function that one of its phases demands off and the other on. */
    ChannelProblem asPhases() {
        String[] vectors = new String[vertices];
        for (int v = 0; v < vertices; v++) {
            StringBuilder vector = new StringBuilder();
            for (int[] edge : edges) {
                vector.append(edge[0] == v ? "0" : edge[1] == v ? "1" : "-");
            }
            vectors[v] = vector.toString();
        }
        return Radios.vectors(DecodedBy.TABLE, vectors);
    }
}
