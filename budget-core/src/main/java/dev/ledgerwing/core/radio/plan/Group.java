package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.radio.plan.CodedRadio.PhasePair;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Some switched functions that are to share a channel, and what that has to give. Members are in the order of the record. */
final class Group {

    private final CodedRadio radio;
    private final int[] members;
    private final List<Requirement> requirements = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final boolean[] bounded;
    private final boolean anyOrderDoes;
    private final boolean[] limited;
    private final int apart;

    Group(CodedRadio radio, int[] members) {
        this.radio = radio;
        this.members = members;
        bounded = new boolean[radio.phases()];
        for (int p = 0; p < bounded.length; p++) {
            bounded[p] = isBounded(p);
        }
        boolean[] heeded = heeded();
        int most = 0;
        for (int p = 0; p < bounded.length; p++) {
            if (heeded[p]) {
                most = Math.max(most, require(p));
            }
        }
        apart = most;
        if (radio.ordered()) {
            addLimits(heeded);
        }
        limited = new boolean[radio.phases()];
        for (Limit limit : limits) {
            limited[limit.one()] = true;
            limited[limit.other()] = true;
        }
        anyOrderDoes = limits.isEmpty() && !has(DecodedBy.ONE_STEP) && !has(DecodedBy.SERVO);
    }

    /**
     * What a position may have that is crossed between one chosen in the first phase and one chosen in the other, which can be
     * the same phase.
     */
    static final class Limit {

        private final int one;
        private final int other;
        private final int[] accepted;

        private Limit(int one, int other, int[] accepted) {
            this.one = one;
            this.other = other;
            this.accepted = accepted;
        }

        int one() {
            return one;
        }

        int other() {
            return other;
        }

        int accepted(int member) {
            return accepted[member];
        }
    }

    /** All the functions of the radio. */
    static Group ofAll(CodedRadio radio) {
        int[] members = new int[radio.size()];
        Arrays.setAll(members, i -> i);
        return new Group(radio, members);
    }

    /** The same, but asked for nothing except in one phase or two. */
    Group onlyIn(int p, int q) {
        Group part = new Group(radio, members);
        part.requirements.removeIf(each -> each.phase() != p && each.phase() != q);
        part.limits.removeIf(each -> (each.one() != p && each.one() != q) || (each.other() != p && each.other() != q));
        return part;
    }

    /** A phase that demands nothing and bears everything, between others of the same kind, asks for nothing. */
    private boolean[] heeded() {
        boolean[] heeded = new boolean[radio.phases()];
        for (int p = 0; p < heeded.length; p++) {
            heeded[p] = bounded[p] || demands(p);
        }
        for (PhasePair pair : radio.successions()) {
            heeded[pair.one()] |= bounded[pair.other()];
            heeded[pair.other()] |= bounded[pair.one()];
        }
        return heeded;
    }

    private boolean isBounded(int p) {
        for (int f : members) {
            if (radio.may(p, f) != radio.all(f)) {
                return true;
            }
        }
        return false;
    }

    private boolean demands(int p) {
        for (int f : members) {
            if (radio.must(p, f) != 0 || radio.bearable(p, f) != radio.all(f)) {
                return true;
            }
        }
        return false;
    }

    /** Answers how many positions these need at least. */
    private int require(int phase) {
        Combinations combinations = new Combinations(radio, members, phase);
        for (int[] demanded : combinations.largest()) {
            int[] accepted = new int[members.length];
            for (int i = 0; i < accepted.length; i++) {
                accepted[i] = demanded[i] != 0 ? demanded[i] : radio.bearable(phase, members[i]);
            }
            requirements.add(new Requirement(phase, demanded, accepted));
        }
        return combinations.apart();
    }

    private void addLimits(boolean[] heeded) {
        for (int p = 0; p < bounded.length; p++) {
            if (bounded[p]) {
                limits.add(limit(p, p));
            }
        }
        for (PhasePair pair : radio.successions()) {
            boolean both = heeded[pair.one()] && heeded[pair.other()];
            if (both && (bounded[pair.one()] || bounded[pair.other()])) {
                limits.add(limit(pair.one(), pair.other()));
            }
        }
    }

    private Limit limit(int p, int q) {
        return new Limit(
                p,
                q,
                Arrays.stream(members)
                        .map(f -> radio.may(p, f) & radio.may(q, f))
                        .toArray());
    }

    CodedRadio radio() {
        return radio;
    }

    int size() {
        return members.length;
    }

    int member(int i) {
        return members[i];
    }

    List<Requirement> requirements() {
        return requirements;
    }

    /** How many positions it needs at least, by the combinations of one phase that differ from each other. */
    int apart() {
        return apart;
    }

    /** Whether it matters in this phase which of the positions that give a combination is chosen. */
    boolean limited(int phase) {
        return limited[phase];
    }

    List<Limit> limits() {
        return limits;
    }

    DecodedBy decoder(int i) {
        return radio.decoder(members[i]);
    }

    boolean has(DecodedBy decoder) {
        for (int f : members) {
            if (radio.decoder(f) == decoder) {
                return true;
            }
        }
        return false;
    }

    /** Whether positions can be exchanged freely: every decoder is a table and no position may not be crossed. */
    boolean anyOrderDoes() {
        return anyOrderDoes;
    }
}
