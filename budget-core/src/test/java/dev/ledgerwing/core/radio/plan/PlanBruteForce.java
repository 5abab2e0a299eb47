package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
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
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The rule of the channels word for word, by trying everything: for small radios only, and without anything of the planner. */
final class PlanBruteForce {

    private final ChannelProblem problem;
    private final Control control;
    private final List<RadioFunction> group;
    private final List<List<String>> states;

    private PlanBruteForce(
            ChannelProblem problem, Control control, List<RadioFunction> group, List<List<String>> states) {
        this.problem = problem;
        this.control = control;
        this.group = group;
        this.states = states;
    }

    /** Whether the channels do everything that is asked of switched functions. */
    static boolean isRight(ChannelProblem problem, List<Channel> channels) {
        Map<String, Control> controls = new HashMap<>();
        problem.radio().controls().forEach(each -> controls.put(each.code(), each));
        Map<String, Integer> carried = new HashMap<>();
        Set<String> taken = new HashSet<>();
        for (Channel channel : channels) {
            channel.functions().forEach(code -> carried.merge(code, 1, Integer::sum));
            Control control = controls.get(String.valueOf(channel.control()));
            if (control == null
                    || !taken.add(control.code())
                    || !control.mixes().stream().allMatch(taken::add)) {
                return false;
            }
            if (!isRight(problem, channel, control)) {
                return false;
            }
        }
        return problem.radio().functions().stream()
                .filter(function -> function.otherwiseBy() == null)
                .allMatch(function -> carried.getOrDefault(function.code(), 0) == 1);
    }

    private static boolean isRight(ChannelProblem problem, Channel channel, Control control) {
        List<RadioFunction> group = new ArrayList<>();
        List<List<String>> states = new ArrayList<>();
        boolean presets = asks(problem, OnLoss.PRESET);
        for (Carried carried : channel.carries()) {
            RadioFunction function = problem.radio().functions().stream()
                    .filter(each -> each.code().equals(carried.function()))
                    .findFirst()
                    .orElseThrow();
            group.add(function);
            states.add(carried.states());
            String wanted = function.onSignalLoss();
            if (presets && wanted != null && !wanted.equals(carried.presetState())) {
                return false;
            }
        }
        return mayBeTogether(group) && new PlanBruteForce(problem, control, group, states).isCarried();
    }

    private static boolean mayBeTogether(List<RadioFunction> group) {
        return group.size() == 1
                || group.stream()
                        .noneMatch(function -> function.criticality() == Criticality.FLIGHT || function.irreversible());
    }

    /** Whether a group is carried by a control in one way or another: all states at all positions are tried. */
    static boolean canBeCarried(ChannelProblem problem, Control control, List<RadioFunction> group) {
        return mayBeTogether(group) && tried(problem, control, group, new ArrayList<>());
    }

    private static boolean tried(
            ChannelProblem problem, Control control, List<RadioFunction> group, List<List<String>> states) {
        if (states.size() == group.size()) {
            return new PlanBruteForce(problem, control, group, states).isCarried();
        }
        for (List<String> row : rows(group.get(states.size()).states(), positions(control))) {
            states.add(row);
            boolean carried = tried(problem, control, group, states);
            states.remove(states.size() - 1);
            if (carried) {
                return true;
            }
        }
        return false;
    }

    private static List<List<String>> rows(List<String> all, int length) {
        List<List<String>> rows = new ArrayList<>(List.of(List.of()));
        for (int i = 0; i < length; i++) {
            List<List<String>> longer = new ArrayList<>();
            for (List<String> row : rows) {
                for (String state : all) {
                    List<String> more = new ArrayList<>(row);
                    more.add(state);
                    longer.add(more);
                }
            }
            rows = longer;
        }
        return rows;
    }

    private static int positions(Control control) {
        Integer positions = control.positions();
        return positions == null ? 0 : positions;
    }

    private boolean isCarried() {
        for (List<String> row : states) {
            if (row.size() != positions(control)) {
                return false;
            }
        }
        return isDecoded() && phasesServed(new ArrayList<>());
    }

    private boolean isDecoded() {
        if (!asks(problem, OnLoss.PRESET)) {
            return followed(-1, false);
        }
        for (int place = 0; place <= positions(control); place++) {
            if (followed(place, true) || (place < positions(control) && followed(place, false))) {
                return true;
            }
        }
        return false;
    }

    /** With a level of its own before a position, or with the position itself having what is wanted. */
    private boolean followed(int place, boolean own) {
        for (int f = 0; f < group.size(); f++) {
            RadioFunction function = group.get(f);
            String wanted = function.onSignalLoss();
            boolean any = false;
            for (String level : wanted == null ? function.states() : List.of(wanted)) {
                List<String> row = new ArrayList<>(states.get(f));
                boolean has =
                        place < 0 || own || wanted == null || row.get(place).equals(wanted);
                if (own) {
                    row.add(place, level);
                }
                any |= has && canFollow(function, row);
            }
            if (!any) {
                return false;
            }
        }
        return true;
    }

    private static boolean canFollow(RadioFunction function, List<String> row) {
        int changes = 0;
        boolean up = true;
        boolean down = true;
        for (int x = 1; x < row.size(); x++) {
            int step = function.states().indexOf(row.get(x)) - function.states().indexOf(row.get(x - 1));
            changes += step == 0 ? 0 : 1;
            up &= step > 0;
            down &= step < 0;
        }
        if (function.decodedBy() == DecodedBy.ONE_STEP) {
            return changes <= 1;
        }
        return function.decodedBy() != DecodedBy.SERVO || up || down;
    }

    /** For every phase a set of positions is tried that gives all it asks, one phase after the other. */
    private boolean phasesServed(List<Integer> chosen) {
        int p = chosen.size();
        if (p == problem.phases().size()) {
            return true;
        }
        for (int set = 1; set < 1 << positions(control); set++) {
            chosen.add(set);
            if (serves(p, set) && waysAreClear(chosen) && phasesServed(chosen)) {
                return true;
            }
            chosen.remove(p);
        }
        return false;
    }

    private boolean serves(int p, int set) {
        for (int x = 0; x < positions(control); x++) {
            if ((set & (1 << x)) != 0 && !isBearable(p, x)) {
                return false;
            }
        }
        return combinationsServed(p, set, new ArrayList<>());
    }

    private boolean isBearable(int p, int x) {
        for (int f = 0; f < group.size(); f++) {
            RadioFunction function = group.get(f);
            String phase = problem.phases().get(p).code();
            String state = states.get(f).get(x);
            if (!function.demandIn(phase).allows(state)) {
                return false;
            }
            String wanted = function.onSignalLoss();
            if (asks(problem, OnLoss.HOLD) && wanted != null) {
                Set<String> held = new HashSet<>(function.demandIn(phase).mustSelect());
                held.add(wanted);
                held.removeIf(each -> !function.demandIn(phase).allows(each));
                if (!held.isEmpty() && !held.contains(state)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** {@code demanded} holds for each of the first functions a state that is demanded, or nothing. */
    private boolean combinationsServed(int p, int set, List<String> demanded) {
        if (demanded.size() == group.size()) {
            return isGivenUp(p, demanded) || isReached(set, demanded);
        }
        RadioFunction function = group.get(demanded.size());
        List<String> choices = new ArrayList<>(
                function.demandIn(problem.phases().get(p).code()).mustSelect());
        choices.add("");
        for (String choice : choices) {
            demanded.add(choice);
            boolean served = combinationsServed(p, set, demanded);
            demanded.remove(demanded.size() - 1);
            if (!served) {
                return false;
            }
        }
        return true;
    }

    private boolean isGivenUp(int p, List<String> demanded) {
        Set<NotNeeded.FunctionState> combination = new HashSet<>();
        for (int f = 0; f < group.size(); f++) {
            if (!demanded.get(f).isEmpty()) {
                combination.add(new NotNeeded.FunctionState(group.get(f).code(), demanded.get(f)));
            }
        }
        String phase = problem.phases().get(p).code();
        return problem.radio().notNeeded().stream()
                .anyMatch(given -> given.holdsIn(phase) && combination.containsAll(given.states()));
    }

    private boolean isReached(int set, List<String> demanded) {
        for (int x = 0; x < positions(control); x++) {
            boolean here = (set & (1 << x)) != 0;
            for (int f = 0; f < group.size(); f++) {
                here &= demanded.get(f).isEmpty()
                        || demanded.get(f).equals(states.get(f).get(x));
            }
            if (here) {
                return true;
            }
        }
        return false;
    }

    private boolean waysAreClear(List<Integer> chosen) {
        for (int p = 0; p < chosen.size(); p++) {
            for (int q = 0; q < chosen.size(); q++) {
                Phase one = problem.phases().get(p);
                boolean moves =
                        p == q || one.next().contains(problem.phases().get(q).code());
                if (moves && !isClear(new int[] {p, q}, chosen.get(p), chosen.get(q))) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isClear(int[] phases, int from, int to) {
        for (int i = 0; i < positions(control); i++) {
            for (int j = 0; j < positions(control); j++) {
                for (int x = 0; x < positions(control); x++) {
                    boolean chosen = (from & (1 << i)) != 0 && (to & (1 << j)) != 0;
                    if (chosen && isCrossed(i, j, x) && !(allows(phases[0], x) && allows(phases[1], x))) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private boolean allows(int p, int x) {
        String phase = problem.phases().get(p).code();
        for (int f = 0; f < group.size(); f++) {
            if (!group.get(f).demandIn(phase).allows(states.get(f).get(x))) {
                return false;
            }
        }
        return true;
    }

    /** The way of one switch of a mix and then of the other, step by step, whichever comes first. */
    private boolean isCrossed(int i, int j, int x) {
        if (x == i || x == j) {
            return false;
        }
        if (control.kind() != Control.Kind.MIXED) {
            return Math.min(i, j) < x && x < Math.max(i, j);
        }
        int fine = problem.radio().controls().stream()
                .filter(each -> each.code().equals(control.mixes().get(1)))
                .mapToInt(PlanBruteForce::positions)
                .findFirst()
                .orElseThrow();
        int coarseFirst = j / fine * fine + i % fine;
        int fineFirst = i / fine * fine + j % fine;
        return walked(i, coarseFirst, fine).contains(x)
                || walked(coarseFirst, j, fine).contains(x)
                || walked(i, fineFirst, fine).contains(x)
                || walked(fineFirst, j, fine).contains(x);
    }

    private static Set<Integer> walked(int from, int to, int fine) {
        int step = from % fine == to % fine ? fine : 1;
        Set<Integer> walked = new HashSet<>();
        for (int x = Math.min(from, to); x <= Math.max(from, to); x += step) {
            walked.add(x);
        }
        return walked;
    }

    private static boolean asks(ChannelProblem problem, OnLoss what) {
        RadioLink link = problem.radio().link();
        boolean told = link != null
                && link.actsOnLoss() == ActsOnLoss.BOARD
                && link.boardLearnsBy() != null
                && link.boardLearnsBy() != BoardLearnsBy.NOTHING;
        return link != null && link.onLoss() == what && !told;
    }
}
