package dev.ledgerwing.core.power.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A network in which every rail is fed by one feed at most: trees that grow from the sources. Nodes come after the node they are fed by;
 * the step of a node is what lies between the two.
 */
final class Forest {

    /** Parent of a source's terminals. */
    static final int NO_PARENT = -1;

    private final List<Step> steps = new ArrayList<>();
    private final List<Integer> parents = new ArrayList<>();

    /** Adds the terminals of a source with its inner resistance. */
    int addSource(double innerOhm) {
        return add(NO_PARENT, new Step(innerOhm, 0, null));
    }

    /** Adds a way from a node on; the node at its end. */
    int addWay(int from, Way way) {
        int node = from;
        for (Step step : way.steps()) {
            node = add(node, step);
        }
        return node;
    }

    private int add(int parent, Step step) {
        parents.add(parent);
        steps.add(step);
        return steps.size() - 1;
    }

    int size() {
        return steps.size();
    }

    Shape shape() {
        int[] parent = parents.stream().mapToInt(Integer::intValue).toArray();
        int[] root = new int[parent.length];
        for (int i = 0; i < parent.length; i++) {
            root[i] = parent[i] == NO_PARENT ? i : root[parent[i]];
        }
        return new Shape(
                parent,
                root,
                steps.stream().mapToDouble(Step::ohm).toArray(),
                steps.stream().mapToDouble(Step::forwardV).toArray(),
                steps.stream().map(Step::conversion).toArray(Conversion[]::new));
    }

    /** The same in arrays, for speed. */
    @SuppressWarnings("ArrayRecordComponent") // held by the solver alone, never compared
    record Shape(
            int[] parent,
            int[] root,
            double[] ohm,
            double[] forwardV,
            @Nullable Conversion[] conversion) {

        int size() {
            return parent.length;
        }

        /** The same with nothing lost in diodes. */
        Shape withoutForward() {
            return new Shape(parent, root, ohm, new double[size()], conversion);
        }
    }
}
