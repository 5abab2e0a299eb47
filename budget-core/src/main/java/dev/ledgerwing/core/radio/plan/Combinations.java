package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.radio.plan.CodedRadio.GivenUp;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The combinations of states that a group must be able to take in a phase: every choice of a demanded state for each of its
 * functions that demand something, but for those given up, of which the largest parts that are not given up remain.
 *
 * <p>A combination is an array with the bit of a state for each member, 0 where the member is left out.
 */
final class Combinations {

    private final CodedRadio radio;
    private final int[] members;
    private final int phase;

    private final List<int[]> largest;
    private final int apart;

    /** Function by function: a largest combination of more functions is a part of one of fewer, and one state more. */
    Combinations(CodedRadio radio, int[] members, int phase) {
        this.radio = radio;
        this.members = members;
        this.phase = phase;
        List<int[]> found = List.of(new int[members.length]);
        int most = 1;
        for (int i = 0; i < members.length && most <= Control.MOST_POSITIONS; i++) {
            int must = radio.must(phase, members[i]);
            if (must != 0) {
                found = extended(found, i, must);
                most = Math.max(most, whole(found, i));
            }
        }
        largest = found;
        apart = most;
    }

    /** The largest ones that are not given up; none is part of another. Without any demand it is the empty one. */
    List<int[]> largest() {
        return largest;
    }

    /** How many of them differ from each other, so that each needs a position of its own; counted up to the most there are. */
    int apart() {
        return apart;
    }

    private int whole(List<int[]> combinations, int last) {
        int whole = 0;
        for (int[] combination : combinations) {
            boolean all = true;
            for (int i = 0; i <= last; i++) {
                all &= combination[i] != 0 || radio.must(phase, members[i]) == 0;
            }
            whole += all ? 1 : 0;
        }
        return whole;
    }

    private List<int[]> extended(List<int[]> combinations, int member, int must) {
        List<int[]> found = new ArrayList<>();
        for (int[] combination : combinations) {
            for (int left = must; left != 0; left &= left - 1) {
                int[] more = combination.clone();
                more[member] = left & -left;
                addParts(more, member, found);
            }
            found.add(combination);
        }
        radio.effort().spend(found.size());
        return withoutParts(found);
    }

    /** Adds the combination, or what is left of it when of each combination given up in it one state is taken out. */
    private void addParts(int[] combination, int newest, List<int[]> found) {
        GivenUp within = null;
        for (GivenUp given : radio.givenUp()) {
            if (within == null && given.phases().get(phase) && holds(combination, given)) {
                within = given;
            }
        }
        if (within == null) {
            found.add(combination);
            return;
        }
        for (int function : within.functions()) {
            int member = Arrays.binarySearch(members, function);
            if (member != newest) {
                int[] less = combination.clone();
                less[member] = 0;
                addParts(less, newest, found);
            }
        }
    }

    private boolean holds(int[] combination, GivenUp given) {
        for (int i = 0; i < given.functions().size(); i++) {
            int member = Arrays.binarySearch(members, given.functions().get(i));
            if (member < 0 || combination[member] != 1 << given.states().get(i)) {
                return false;
            }
        }
        return true;
    }

    private static List<int[]> withoutParts(List<int[]> combinations) {
        List<int[]> largest = new ArrayList<>();
        for (int[] one : combinations) {
            if (largest.stream().noneMatch(other -> isPart(one, other))) {
                largest.removeIf(other -> isPart(other, one));
                largest.add(one);
            }
        }
        return largest;
    }

    private static boolean isPart(int[] part, int[] whole) {
        for (int i = 0; i < part.length; i++) {
            if (part[i] != 0 && part[i] != whole[i]) {
                return false;
            }
        }
        return true;
    }
}
