package dev.ledgerwing.core.power.network;

import java.util.Arrays;

/**
 * Solves the voltages of a {@link Forest}, V in volts, I in amperes, R in ohm:
 *
 * <pre>
 * F_i(V) = V_i - V_parent + V_F + R_i I_i(V)      behind a resistance and diodes
 * F_i(V) = V_i - min(V_set, V_parent - V_drop)    behind a regulator
 * I_i(V) = loads: I, and P/V_i of constant power; plus what every node fed from here draws
 * </pre>
 *
 * Every current is a sum of products of constants and of 1/V, so it falls with each voltage and is convex; so is F, and its Jacobian has no
 * positive entry beside its diagonal. From voltages without any current, where F is not negative, Newton's method then falls to the upper
 * solution from above, and each Jacobian on its way has positive pivots (Ortega and Rheinboldt, Iterative Solution of Nonlinear
 * Equations in Several Variables, 13.3, the monotone Newton theorem). So a pivot that is not positive, or a voltage that is not, proves
 * that no solution exists: the supply collapses. Eliminating from the leaves to the roots costs as many steps as there are nodes.
 */
final class ForestSolver {

    private static final int MOST_STEPS = 200;
    private static final double RELATIVE_CHANGE = 1e-13;
    /** Below this a pivot is not told apart from 0. */
    private static final double LEAST_PIVOT = 1e-12;

    private final Forest.Shape shape;
    private final double[] openV;
    private final double[] constantA;
    private final double[] constantW;
    /** Voltage at each node; 0 where none arrives. */
    private final double[] volts;
    /** Current through the step into each node, on its far side. */
    private final double[] amperes;
    /** The linear part of the same: amperes = base + slope V once all nodes behind are eliminated. */
    private final double[] base;

    private final double[] slope;
    private final double[] pivot;
    /** Of each node whether it takes part; of a root whether its tree stands. */
    private final boolean[] isDead;

    private final boolean[] hasCollapsed;

    /**
     * @param openV of each source's node
     * @param constantA drawn at each node at any voltage, and {@code constantW} watts drawn
     */
    ForestSolver(Forest.Shape shape, double[] openV, double[] constantA, double[] constantW) {
        int size = shape.size();
        this.shape = shape;
        this.openV = openV;
        this.constantA = constantA;
        this.constantW = constantW;
        this.volts = new double[size];
        this.amperes = new double[size];
        this.base = new double[size];
        this.slope = new double[size];
        this.pivot = new double[size];
        this.isDead = new boolean[size];
        this.hasCollapsed = new boolean[size];
    }

    ForestSolver solve() {
        idle();
        boolean isSettled = false;
        for (int i = 0; i < MOST_STEPS && !isSettled; i++) {
            draw();
            eliminate();
            isSettled = descend();
        }
        if (!isSettled) {
            Arrays.fill(hasCollapsed, true); // never seen; the safe side
        }
        bury();
        draw();
        return this;
    }

    double volts(int node) {
        return volts[node];
    }

    /** On the far side of the step into the node. */
    double amperes(int node) {
        return amperes[node];
    }

    boolean hasCollapsed(int node) {
        return hasCollapsed[shape.root()[node]];
    }

    /** Voltages without any current: no solution can lie above them. Where nothing arrives even so, nothing is drawn. */
    private void idle() {
        for (int i = 0; i < shape.size(); i++) {
            int parent = shape.parent()[i];
            double inV = parent == Forest.NO_PARENT ? openV[i] : volts[parent];
            Conversion conversion = shape.conversion()[i];
            double idleV = conversion == null ? inV - shape.forwardV()[i] : conversion.outV(inV);
            isDead[i] = (parent != Forest.NO_PARENT && isDead[parent]) || idleV <= 0;
            volts[i] = isDead[i] ? 0 : idleV;
        }
    }

    private boolean rests(int node) {
        return isDead[node] || hasCollapsed[shape.root()[node]];
    }

    /** Currents at the present voltages, from the leaves to the roots. */
    private void draw() {
        for (int i = 0; i < shape.size(); i++) {
            amperes[i] = rests(i) ? 0 : constantA[i] + constantW[i] / volts[i];
        }
        for (int i = shape.size() - 1; i >= 0; i--) {
            int parent = shape.parent()[i];
            if (parent != Forest.NO_PARENT && !rests(i)) {
                Conversion conversion = shape.conversion()[i];
                amperes[parent] += conversion == null ? amperes[i] : conversion.inA(volts[parent], amperes[i]);
            }
        }
    }

    private void eliminate() {
        for (int i = 0; i < shape.size(); i++) {
            slope[i] = rests(i) ? 0 : -constantW[i] / (volts[i] * volts[i]);
            base[i] = rests(i) ? 0 : constantA[i] - 2 * slope[i] * volts[i];
        }
        for (int i = shape.size() - 1; i >= 0; i--) {
            if (!rests(i)) {
                pivot[i] = shape.conversion()[i] == null ? 1 + shape.ohm()[i] * slope[i] : 1;
                if (pivot[i] < LEAST_PIVOT) {
                    hasCollapsed[shape.root()[i]] = true;
                } else if (shape.parent()[i] != Forest.NO_PARENT) {
                    handUp(i, shape.parent()[i]);
                }
            }
        }
    }

    private void handUp(int node, int parent) {
        Conversion conversion = shape.conversion()[node];
        if (conversion == null) {
            slope[parent] += slope[node] / pivot[node];
            base[parent] += (base[node] - slope[node] * shape.forwardV()[node]) / pivot[node];
            return;
        }
        boolean holds = conversion.holdsItsOutput(volts[parent]);
        double outBase = base[node] + slope[node] * (holds ? conversion.outputV() : -conversion.dropoutV());
        double outSlope = holds ? 0 : slope[node];
        double factor = conversion.switches() ? conversion.inputFactorV() / volts[parent] : 1;
        double fall = conversion.switches() ? factor * amperes[node] / volts[parent] : 0;
        slope[parent] += factor * outSlope - fall;
        base[parent] += factor * outBase + fall * volts[parent] + conversion.quiescentA();
    }

    /** New voltages from the roots to the leaves; whether they have stopped falling. */
    private boolean descend() {
        boolean isSettled = true;
        for (int i = 0; i < shape.size(); i++) {
            if (rests(i)) {
                continue;
            }
            double next = next(i);
            if (next <= 0) {
                hasCollapsed[shape.root()[i]] = true;
                isSettled = false;
            } else {
                isSettled &= volts[i] - next <= RELATIVE_CHANGE * volts[i];
                volts[i] = Math.min(next, volts[i]); // it only ever falls; a rise is rounding
            }
        }
        return isSettled;
    }

    private double next(int node) {
        int parent = shape.parent()[node];
        double inV = parent == Forest.NO_PARENT ? openV[node] : volts[parent];
        Conversion conversion = shape.conversion()[node];
        if (conversion == null) {
            return (inV - shape.forwardV()[node] - shape.ohm()[node] * base[node]) / pivot[node];
        }
        return conversion.outV(inV);
    }

    private void bury() {
        for (int i = 0; i < shape.size(); i++) {
            if (rests(i)) {
                volts[i] = 0;
            }
        }
    }
}
