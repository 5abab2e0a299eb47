package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The demands on switched functions in numbers: functions and phases by their place in a list, sets of states as bits. */
final class CodedRadio {

    private final List<RadioFunction> functions;
    private final List<Phase> phases;
    private final LossRule loss;
    private final boolean anyOrder;
    private final int[][] may;
    private final int[][] must;
    private final int[] wanted;
    private final List<GivenUp> givenUp;
    private final List<PhasePair> successions;
    private final Effort effort = Effort.whole();

    private CodedRadio(ChannelProblem problem, List<RadioFunction> functions, LossRule loss, boolean anyOrder) {
        this.functions = List.copyOf(functions);
        this.phases = problem.phases();
        this.loss = loss;
        this.anyOrder = anyOrder;
        may = new int[phases.size()][functions.size()];
        must = new int[phases.size()][functions.size()];
        for (int p = 0; p < phases.size(); p++) {
            for (int f = 0; f < functions.size(); f++) {
                RadioFunction function = functions.get(f);
                Demand demand = function.demandIn(phases.get(p).code());
                may[p][f] = demand.mayHave().isEmpty() ? all(function) : bits(function, demand.mayHave());
                must[p][f] = bits(function, demand.mustSelect());
            }
        }
        wanted = this.functions.stream().mapToInt(CodedRadio::wanted).toArray();
        givenUp = problem.radio().notNeeded().stream()
                .map(this::coded)
                .filter(Objects::nonNull)
                .toList();
        successions = successions(phases);
    }

    static CodedRadio of(ChannelProblem problem, List<RadioFunction> functions) {
        return new CodedRadio(problem, functions, LossRule.of(problem.radio().link()), false);
    }

    /** As if nothing were asked when the signal is lost. */
    static CodedRadio withoutLoss(ChannelProblem problem, List<RadioFunction> functions) {
        return new CodedRadio(problem, functions, LossRule.NOTHING, false);
    }

    /** As if besides every position did no harm to those who cross it, and every decoder were a table. */
    static CodedRadio inAnyOrder(ChannelProblem problem, List<RadioFunction> functions) {
        return new CodedRadio(problem, functions, LossRule.NOTHING, true);
    }

    /** Two phases between which the pilot moves from position to position. */
    record PhasePair(int one, int other) {}

    /** A combination that is not needed in some phases. */
    record GivenUp(List<Integer> functions, List<Integer> states, BitSet phases) {}

    private static List<PhasePair> successions(List<Phase> phases) {
        List<String> codes = phases.stream().map(Phase::code).toList();
        List<PhasePair> pairs = new ArrayList<>();
        for (int p = 0; p < codes.size(); p++) {
            for (String next : phases.get(p).next()) {
                int q = codes.indexOf(next);
                if (q >= 0 && q != p) {
                    pairs.add(new PhasePair(p, q));
                }
            }
        }
        return pairs;
    }

    /** Null where it names a function or a state that is not among these: then no combination of theirs holds it. */
    private @Nullable GivenUp coded(NotNeeded given) {
        List<Integer> named = new ArrayList<>();
        List<Integer> states = new ArrayList<>();
        for (NotNeeded.FunctionState each : given.states()) {
            RadioFunction function = functions.stream()
                    .filter(one -> one.code().equals(each.function()))
                    .findFirst()
                    .orElse(null);
            if (function == null || !function.states().contains(each.state())) {
                return null;
            }
            named.add(functions.indexOf(function));
            states.add(function.states().indexOf(each.state()));
        }
        BitSet inPhase = new BitSet();
        for (int p = 0; p < phases.size(); p++) {
            inPhase.set(p, given.holdsIn(phases.get(p).code()));
        }
        return new GivenUp(named, states, inPhase);
    }

    private static int wanted(RadioFunction function) {
        String wanted = function.onSignalLoss();
        return wanted == null ? -1 : function.states().indexOf(wanted);
    }

    private static int bits(RadioFunction function, Collection<String> states) {
        int bits = 0;
        for (String state : states) {
            bits |= 1 << function.states().indexOf(state);
        }
        return bits;
    }

    private static int all(RadioFunction function) {
        return (1 << function.states().size()) - 1;
    }

    /** What is left to spend on the questions about this radio together. */
    Effort effort() {
        return effort;
    }

    int phases() {
        return phases.size();
    }

    Phase phase(int p) {
        return phases.get(p);
    }

    RadioFunction function(int f) {
        return functions.get(f);
    }

    int size() {
        return functions.size();
    }

    int all(int f) {
        return all(functions.get(f));
    }

    int may(int p, int f) {
        return may[p][f];
    }

    int must(int p, int f) {
        return must[p][f];
    }

    /** States in which it may be left: in a position that the pilot can choose in this phase, when the signal is lost then. */
    int bearable(int p, int f) {
        int wanted = lossState(f);
        if (loss != LossRule.HOLD || wanted < 0) {
            return may[p][f];
        }
        int bearable = may[p][f] & ((1 << wanted) | must[p][f]);
        return bearable == 0 ? may[p][f] : bearable;
    }

    /** Which of its states is wanted when the signal is lost; -1 = none is said. */
    int lossState(int f) {
        return wanted[f];
    }

    boolean presets() {
        return loss == LossRule.PRESET;
    }

    /** A decoder that is not known is taken for a table, the one that can do most. */
    DecodedBy decoder(int f) {
        DecodedBy decoder = functions.get(f).decodedBy();
        return decoder == null || anyOrder ? DecodedBy.TABLE : decoder;
    }

    boolean ordered() {
        return !anyOrder;
    }

    List<GivenUp> givenUp() {
        return givenUp;
    }

    List<PhasePair> successions() {
        return successions;
    }
}
