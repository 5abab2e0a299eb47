package dev.ledgerwing.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Parts heaped on a beam, each exactly over its own station: the heaviest lie lowest, no two overlap. Heights mean nothing but room.
 */
final class Stack {

    private static final double GAP = 0.8;
    private static final double LEAST_RADIUS = 1.3;

    private final List<Load> loads = new ArrayList<>();
    private final Scale x;
    private final double radiusPerRootGram;

    private Stack(Scale x, double radiusPerRootGram) {
        this.x = x;
        this.radiusPerRootGram = radiusPerRootGram;
    }

    /** The parts on a beam at height 0, heaviest first, the heaviest with {@code largest} as its radius. */
    static List<Load> of(List<PartMark> parts, Scale x, double largest) {
        double heaviest =
                parts.stream().mapToDouble(PartMark::gramsOrZero).max().orElse(1);
        Stack stack = new Stack(x, largest / Math.sqrt(heaviest));
        parts.stream()
                .sorted(Comparator.comparingDouble(PartMark::gramsOrZero)
                        .reversed()
                        .thenComparing(PartMark::name))
                .forEach(stack::put);
        return stack.loads;
    }

    private void put(PartMark part) {
        double radius = Math.max(LEAST_RADIUS, radiusPerRootGram * Math.sqrt(part.gramsOrZero()));
        double at = x.at(part.xMmOrZero());
        List<Load> near = loads.stream()
                .filter(load -> Math.abs(load.centre().x() - at) < load.radius() + radius + GAP)
                .toList();
        double[] heights = DoubleStream.concat(
                        DoubleStream.of(-radius), near.stream().mapToDouble(load -> over(load, at, radius)))
                .filter(height -> height <= -radius)
                .sorted()
                .toArray();
        for (int lowest = heights.length - 1; lowest >= 0; lowest--) {
            Load load = new Load(part, new Spot(at, heights[lowest]), radius);
            if (near.stream().allMatch(other -> load.isClearOf(other, GAP))) {
                loads.add(load);
                return;
            }
        }
    }

    /** Where a circle over {@code at} just touches {@code load} from above. */
    private static double over(Load load, double at, double radius) {
        double apart = load.radius() + radius + GAP;
        double across = at - load.centre().x();
        return load.centre().y() - Math.sqrt(apart * apart - across * across);
    }
}
