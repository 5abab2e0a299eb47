package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.jspecify.annotations.Nullable;

/**
 * The same network written down another way: the voltage before and behind every single element, and the current through it, are
 * unknowns of one set of equations, solved as a whole by Levenberg and Marquardt's method with a Jacobian by differences. It is told which
 * feeds carry, and nothing else of the solution.
 */
final class SecondSolution {

    /** One equation: how far it is from being met. */
    private interface Equation extends ToDoubleFunction<double[]> {}

    private final NetworkSolution first;
    private final PowerNetwork network;
    private final List<Equation> equations = new ArrayList<>();
    private final List<Double> start = new ArrayList<>();
    private final List<String> nodes = new ArrayList<>();

    SecondSolution(PowerNetwork network, NetworkSolution first) {
        this.network = network;
        this.first = first;
        network.sources().forEach(source -> nodes.add(source.code()));
        network.rails().stream().map(Rail::code).filter(this::isFed).forEach(nodes::add);
    }

    private boolean isFed(String rail) {
        return first.carrier(rail).filter(first::carries).isPresent();
    }

    /** Voltages of all sources and rails that are fed, in the order of {@link #nodes()}. */
    double[] solve() {
        nodes.forEach(node -> start.add(network.highestV(node)));
        List<List<Equation>> drawn = new ArrayList<>();
        nodes.forEach(node -> drawn.add(new ArrayList<>()));
        first.loads().stream()
                .filter(flow -> nodes.contains(flow.load().load().rail()))
                .forEach(flow -> load(flow.load(), drawn));
        List<Integer> into = new ArrayList<>();
        nodes.forEach(node -> into.add(-1));
        network.rails().stream()
                .map(Rail::code)
                .filter(this::isFed)
                .forEach(rail -> feed(first.carrier(rail).orElseThrow(), drawn, into));
        for (int i = 0; i < nodes.size(); i++) {
            balance(i, drawn.get(i), into.get(i));
        }
        return optimum();
    }

    List<String> nodes() {
        return nodes;
    }

    private void load(RailLoad load, List<List<Equation>> drawn) {
        int node = nodes.indexOf(load.load().rail());
        double amperes = first.level() == LoadLevel.PEAK ? known(load.peakA()) : known(load.typicalA());
        double nominalV = known(load.rail() == null ? null : load.rail().nominalV());
        drawn.get(node)
                .add(load.load().draws() == Draws.CONSTANT_CURRENT ? x -> amperes : x -> amperes * nominalV / x[node]);
    }

    /** Unknown of each element: voltage behind it, current into it and current out of it. */
    private void feed(Feed feed, List<List<Equation>> drawn, List<Integer> into) {
        int inV = nodes.indexOf(feed.from());
        int firstA = start.size();
        start.add(0.1);
        drawn.get(inV).add(x -> x[firstA]);
        int inA = firstA;
        for (FeedElement element : feed.elements()) {
            int outV = start.size();
            int outA = outV + 1;
            start.add(network.highestV(feed.to()));
            start.add(0.1);
            element(element, new int[] {inV, inA, outV, outA});
            inV = outV;
            inA = outA;
        }
        int to = nodes.indexOf(feed.to());
        int lastV = inV;
        equations.add(x -> x[to] - x[lastV]);
        into.set(to, inA);
    }

    private void element(FeedElement element, int[] at) {
        Regulator regulator = element.regulator();
        if (regulator == null) {
            double ohm = known(element.milliohm()) / 1000;
            double forwardV = known(element.forwardV());
            equations.add(x -> x[at[0]] - forwardV - ohm * x[at[3]] - x[at[2]]);
            equations.add(x -> x[at[1]] - x[at[3]]);
            return;
        }
        double dropoutV = known(regulator.dropoutV());
        equations.add(x -> x[at[2]] - Math.min(regulator.outputV(), x[at[0]] - dropoutV));
        Double efficiency = regulator.efficiencyPercent();
        equations.add(
                efficiency == null
                        ? x -> x[at[1]] - x[at[3]]
                        : x -> x[at[1]] * x[at[0]] * efficiency / 100 - regulator.outputV() * x[at[3]]);
    }

    private void balance(int node, List<Equation> drawn, int into) {
        if (into >= 0) {
            equations.add(x -> x[into]
                    - drawn.stream().mapToDouble(each -> each.applyAsDouble(x)).sum());
            return;
        }
        SourceModel model = network.models().get(node);
        equations.add(x -> model.openV(first.charge())
                - model.innerOhm()
                        * drawn.stream()
                                .mapToDouble(each -> each.applyAsDouble(x))
                                .sum()
                - x[node]);
    }

    private static double known(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    private double[] optimum() {
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .start(start.stream().mapToDouble(Double::doubleValue).toArray())
                .target(new double[equations.size()])
                .model(model())
                .lazyEvaluation(false)
                .maxEvaluations(10_000)
                .maxIterations(10_000)
                .checker((iteration, before, after) -> after.getRMS() < 1e-13)
                .build();
        LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-15)
                .withParameterRelativeTolerance(1e-15)
                .optimize(problem);
        return optimum.getRMS() < 1e-9 ? optimum.getPoint().toArray() : new double[0];
    }

    private MultivariateJacobianFunction model() {
        return point -> {
            double[] x = point.toArray();
            RealVector value = new ArrayRealVector(values(x));
            RealMatrix jacobian = MatrixUtils.createRealMatrix(equations.size(), x.length);
            for (int i = 0; i < x.length; i++) {
                double step = 1e-6 * Math.max(1, Math.abs(x[i]));
                double kept = x[i];
                x[i] = kept + step;
                RealVector above = new ArrayRealVector(values(x));
                x[i] = kept - step;
                jacobian.setColumnVector(
                        i, above.subtract(new ArrayRealVector(values(x))).mapDivide(2 * step));
                x[i] = kept;
            }
            return new Pair<>(value, jacobian);
        };
    }

    private double[] values(double[] x) {
        return equations.stream().mapToDouble(each -> each.applyAsDouble(x)).toArray();
    }
}
