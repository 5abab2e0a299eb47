package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import java.util.ArrayList;
import java.util.List;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.jspecify.annotations.Nullable;

/**
 * The same problem as a constraint model, written down rule by rule without anything of the planner: which function is on which
 * control, which positions each phase uses, and the state of every function at every position.
 */
final class ChocoPlan {

    private static final int MOST_COUNTED = 100;

    private final Model model = new Model();
    private final ChannelProblem problem;
    private final List<RadioFunction> functions;
    private final List<Control> controls;
    private final BoolVar[][] on;
    private final BoolVar[] used;

    private ChocoPlan(ChannelProblem problem) {
        this.problem = problem;
        functions = problem.radio().functions().stream()
                .filter(function -> function.otherwiseBy() == null)
                .toList();
        controls = problem.radio().controls();
        on = model.boolVarMatrix(functions.size(), controls.size());
        used = model.boolVarArray(controls.size());
    }

    /** The least shared weight, then the fewest channels, as weight * 100 + channels; null = nothing fits. */
    static @Nullable Integer optimum(ChannelProblem problem) {
        return new ChocoPlan(problem).solved();
    }

    private @Nullable Integer solved() {
        functions();
        pins();
        mixes();
        for (int c = 0; c < controls.size(); c++) {
            new OneControl(c).post();
        }
        RadioLink link = problem.radio().link();
        model.sum(used, "<=", link == null ? 0 : link.channels()).post();
        IntVar cost = cost();
        Solution best = model.getSolver().findOptimalSolution(cost, Model.MINIMIZE);
        return best == null ? null : best.getIntVal(cost);
    }

    /** Each on one control; what never shares alone. */
    private void functions() {
        for (int f = 0; f < functions.size(); f++) {
            model.sum(on[f], "=", 1).post();
            for (int c = 0; c < controls.size(); c++) {
                model.arithm(on[f][c], "<=", used[c]).post();
                for (int g = 0; g < functions.size(); g++) {
                    if (g != f && neverShares(functions.get(f))) {
                        model.arithm(on[f][c], "+", on[g][c], "<=", 1).post();
                    }
                }
            }
        }
    }

    private static boolean neverShares(RadioFunction function) {
        return function.criticality() == Criticality.FLIGHT || function.irreversible();
    }

    private void pins() {
        for (Channel pin : problem.radio().channels()) {
            List<Integer> pinned = new ArrayList<>();
            for (int f = 0; f < functions.size(); f++) {
                if (pin.functions().contains(functions.get(f).code())) {
                    pinned.add(f);
                }
            }
            for (int c = 0; c < controls.size() && !pinned.isEmpty(); c++) {
                if (controls.get(c).code().equals(pin.control())) {
                    model.arithm(on[pinned.get(0)][c], "=", 1).post();
                }
                for (int f = 0; f < functions.size(); f++) {
                    BoolVar with = on[pinned.get(0)][c];
                    if (pinned.contains(f)) {
                        model.arithm(on[f][c], "=", with).post();
                    } else {
                        model.arithm(on[f][c], "+", with, "<=", 1).post();
                    }
                }
            }
        }
    }

    private void mixes() {
        for (int c = 0; c < controls.size(); c++) {
            for (int d = 0; d < controls.size(); d++) {
                if (controls.get(c).mixes().contains(controls.get(d).code())) {
                    model.arithm(used[c], "+", used[d], "<=", 1).post();
                }
            }
        }
    }

    private IntVar cost() {
        List<IntVar> parts = new ArrayList<>(List.of(used));
        for (int f = 0; f < functions.size(); f++) {
            for (int g = 0; g < f; g++) {
                int weight = weight(functions.get(f)) + weight(functions.get(g));
                for (int c = 0; c < controls.size(); c++) {
                    BoolVar both = model.boolVar();
                    model.addClausesBoolAndEqVar(on[f][c], on[g][c], both);
                    parts.add(model.mul(both, weight * MOST_COUNTED));
                }
            }
        }
        IntVar cost = model.intVar(0, 100_000);
        model.sum(parts.toArray(new IntVar[0]), "=", cost).post();
        return cost;
    }

    private static int weight(RadioFunction function) {
        return function.criticality() == Criticality.CONVENIENCE ? 1 : 3;
    }

    private boolean asks(OnLoss what) {
        RadioLink link = problem.radio().link();
        boolean told = link != null
                && link.actsOnLoss() == ActsOnLoss.BOARD
                && link.boardLearnsBy() != null
                && link.boardLearnsBy() != BoardLearnsBy.NOTHING;
        return link != null && link.onLoss() == what && !told;
    }

    /** What holds on one control. */
    private final class OneControl {

        private final int c;
        private final int k;
        private final List<Phase> phases = problem.phases();
        private final IntVar[][] state;
        private final BoolVar[][] chosen;

        OneControl(int c) {
            this.c = c;
            Integer positions = controls.get(c).positions();
            k = positions == null ? 0 : positions;
            state = new IntVar[functions.size()][];
            for (int f = 0; f < state.length; f++) {
                state[f] = model.intVarArray(k, 0, functions.get(f).states().size() - 1);
            }
            chosen = model.boolVarMatrix(phases.size(), k);
        }

        void post() {
            for (int p = 0; p < phases.size(); p++) {
                harmless(p);
                combinations(p, 0, new ArrayList<>(), new ArrayList<>());
                passing(p, p);
                for (int q = 0; q < phases.size(); q++) {
                    if (phases.get(p).next().contains(phases.get(q).code())) {
                        passing(p, q);
                    }
                }
            }
            decoding();
        }

        /** A position chosen in a phase has only states that do no harm, and when they are held that are wanted or demanded. */
        private void harmless(int p) {
            for (int f = 0; f < functions.size(); f++) {
                List<Integer> bearable = may(f, p);
                String wanted = functions.get(f).onSignalLoss();
                if (asks(OnLoss.HOLD) && wanted != null) {
                    List<Integer> held = new ArrayList<>(must(f, p));
                    held.add(functions.get(f).states().indexOf(wanted));
                    held.retainAll(bearable);
                    bearable = held.isEmpty() ? bearable : held;
                }
                for (int x = 0; x < k; x++) {
                    model.addClausesBoolOrArrayEqualTrue(
                            new BoolVar[] {chosen[p][x].not(), on[f][c].not(), among(state[f][x], bearable)});
                }
            }
        }

        /** Every choice of a demanded state for any of the functions, unless it holds a combination given up. */
        private void combinations(int p, int from, List<Integer> who, List<Integer> what) {
            if (!holdsGivenUp(p, who, what)) {
                reachable(p, who, what);
            }
            for (int f = from; f < functions.size(); f++) {
                for (int demanded : must(f, p)) {
                    who.add(f);
                    what.add(demanded);
                    combinations(p, f + 1, who, what);
                    who.remove(who.size() - 1);
                    what.remove(what.size() - 1);
                }
            }
        }

        private boolean holdsGivenUp(int p, List<Integer> who, List<Integer> what) {
            for (NotNeeded given : problem.radio().notNeeded()) {
                boolean holds = given.phases().isEmpty()
                        || given.phases().contains(phases.get(p).code());
                for (NotNeeded.FunctionState each : given.states()) {
                    boolean has = false;
                    for (int i = 0; i < who.size(); i++) {
                        RadioFunction function = functions.get(who.get(i));
                        has |= function.code().equals(each.function())
                                && function.states().get(what.get(i)).equals(each.state());
                    }
                    holds &= has;
                }
                if (holds) {
                    return true;
                }
            }
            return false;
        }

        private void reachable(int p, List<Integer> who, List<Integer> what) {
            List<BoolVar> either = new ArrayList<>();
            for (int f : who) {
                either.add(on[f][c].not());
            }
            for (int x = 0; x < k; x++) {
                List<BoolVar> all = new ArrayList<>(List.of(chosen[p][x]));
                for (int i = 0; i < who.size(); i++) {
                    all.add(state[who.get(i)][x].eq(what.get(i)).boolVar());
                }
                BoolVar here = model.boolVar();
                model.addClausesBoolAndArrayEqVar(all.toArray(new BoolVar[0]), here);
                either.add(here);
            }
            model.addClausesBoolOrArrayEqualTrue(either.toArray(new BoolVar[0]));
        }

        private void passing(int p, int q) {
            for (int i = 0; i < k; i++) {
                for (int j = 0; j < k; j++) {
                    for (int x = 0; x < k; x++) {
                        if (isCrossed(i, j, x)) {
                            harmlessOnTheWay(p, q, new int[] {i, j, x});
                        }
                    }
                }
            }
        }

        private void harmlessOnTheWay(int p, int q, int[] way) {
            for (int f = 0; f < functions.size(); f++) {
                List<Integer> both = may(f, p);
                both.retainAll(may(f, q));
                if (both.size() < functions.get(f).states().size()) {
                    model.addClausesBoolOrArrayEqualTrue(new BoolVar[] {
                        chosen[p][way[0]].not(), chosen[q][way[1]].not(), on[f][c].not(), among(state[f][way[2]], both)
                    });
                }
            }
        }

        /** In a mix the one switch may be moved before the other: along one edge of the rectangle, then along the next. */
        private boolean isCrossed(int i, int j, int x) {
            if (x == i || x == j) {
                return false;
            }
            if (controls.get(c).kind() != Control.Kind.MIXED) {
                return (i < x && x < j) || (j < x && x < i);
            }
            String second = controls.get(c).mixes().get(1);
            Integer fine = controls.stream()
                    .filter(control -> control.code().equals(second))
                    .findFirst()
                    .orElseThrow()
                    .positions();
            int n = fine == null ? 1 : fine;
            boolean rows = isWithin(i / n, x / n, j / n);
            boolean columns = isWithin(i % n, x % n, j % n);
            boolean coarseFirst = (x % n == i % n && rows) || (x / n == j / n && columns);
            boolean fineFirst = (x / n == i / n && columns) || (x % n == j % n && rows);
            return coarseFirst || fineFirst;
        }

        private boolean isWithin(int one, int between, int other) {
            return Math.min(one, other) <= between && between <= Math.max(one, other);
        }

        private void decoding() {
            IntVar[] preset = new IntVar[functions.size()];
            for (int f = 0; f < preset.length; f++) {
                String wanted = functions.get(f).onSignalLoss();
                int last = functions.get(f).states().size() - 1;
                int at = wanted == null ? 0 : functions.get(f).states().indexOf(wanted);
                preset[f] = wanted == null ? model.intVar(0, last) : model.intVar(at);
            }
            IntVar place = model.intVar(0, k); // the level of its own comes before this position
            BoolVar own = model.boolVar();
            for (int f = 0; f < functions.size(); f++) {
                decoded(f, state[f], on[f][c]);
                for (int g = 0; asks(OnLoss.PRESET) && g <= k; g++) {
                    BoolVar here = model.boolVar();
                    model.addClausesBoolAndArrayEqVar(
                            new BoolVar[] {on[f][c], own, place.eq(g).boolVar()}, here);
                    decoded(f, withLevel(state[f], preset[f], g), here);
                    if (g < k) {
                        model.addClausesBoolOrArrayEqualTrue(new BoolVar[] {
                            on[f][c].not(),
                            own,
                            place.ne(g).boolVar(),
                            state[f][g].eq(preset[f]).boolVar()
                        });
                    }
                }
            }
            if (asks(OnLoss.PRESET)) {
                model.addClausesBoolOrArrayEqualTrue(
                        new BoolVar[] {own, place.lt(k).boolVar()});
            }
        }

        private IntVar[] withLevel(IntVar[] levels, IntVar level, int place) {
            List<IntVar> more = new ArrayList<>(List.of(levels));
            more.add(place, level);
            return more.toArray(new IntVar[0]);
        }

        private void decoded(int f, IntVar[] levels, BoolVar when) {
            DecodedBy decoder = functions.get(f).decodedBy();
            if (decoder == DecodedBy.ONE_STEP) {
                List<BoolVar> changes = new ArrayList<>();
                for (int x = 1; x < levels.length; x++) {
                    changes.add(levels[x - 1].ne(levels[x]).boolVar());
                }
                IntVar count = model.intVar(0, levels.length);
                model.sum(changes.toArray(new BoolVar[0]), "=", count).post();
                model.addClausesBoolOrArrayEqualTrue(
                        new BoolVar[] {when.not(), count.le(1).boolVar()});
            } else if (decoder == DecodedBy.SERVO) {
                BoolVar up = model.boolVar();
                for (int x = 1; x < levels.length; x++) {
                    model.addClausesBoolOrArrayEqualTrue(new BoolVar[] {
                        when.not(), up.not(), levels[x - 1].lt(levels[x]).boolVar()
                    });
                    model.addClausesBoolOrArrayEqualTrue(new BoolVar[] {
                        when.not(), up, levels[x - 1].gt(levels[x]).boolVar()
                    });
                }
            }
        }

        private BoolVar among(IntVar variable, List<Integer> values) {
            return model.member(variable, values.stream().mapToInt(each -> each).toArray())
                    .reify();
        }

        private List<Integer> may(int f, int p) {
            RadioFunction function = functions.get(f);
            List<String> named = function.demandIn(phases.get(p).code()).mayHave();
            return indices(function, named.isEmpty() ? function.states() : named);
        }

        private List<Integer> must(int f, int p) {
            RadioFunction function = functions.get(f);
            return indices(function, function.demandIn(phases.get(p).code()).mustSelect());
        }

        private List<Integer> indices(RadioFunction function, List<String> named) {
            List<Integer> indices = new ArrayList<>();
            named.forEach(state -> indices.add(function.states().indexOf(state)));
            return indices;
        }
    }
}
