package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether each flight case balances inside the band, at basic and at predicted mass. A part without a mass or a station leaves
 * that unknown even where the rest lies outside: it may bring the CG back. Without a band there is nothing to say here.
 */
record BandRule(BalanceStatement statement, BalanceWords words) {

    Stream<Finding> findings() {
        BalanceBand band = statement.shape().band();
        return band == null ? Stream.empty() : statement.flight().stream().map(aboard -> finding(aboard, band));
    }

    private Finding finding(CaseBalance aboard, BalanceBand band) {
        Optional<CgAgainstBand> basic = CgAgainstBand.of(aboard, MassState.BASIC, band);
        Optional<CgAgainstBand> predicted = CgAgainstBand.of(aboard, MassState.PREDICTED, band);
        String subject = aboard.loadCase().name();
        if (basic.isEmpty() || predicted.isEmpty()) {
            return BalanceAgainst.nothing(BalanceFindings.CG, subject)
                    .finding(Verdict.UNKNOWN, named(subject, withoutCg(aboard)));
        }
        CgAgainstBand worse = basic.get().worseOf(predicted.get());
        BalanceAgainst against =
                BalanceAgainst.inMm(BalanceFindings.CG, subject, worse.cg().xMm(), worse.limitXMm(), worse.insideMm());
        return aboard.isKnown()
                ? against.finding(worse.verdict(), named(subject, judged(worse, basic.get(), predicted.get())))
                : against.finding(Verdict.UNKNOWN, named(subject, incomplete(aboard, basic.get())));
    }

    /** There is one sentence for each case, and it is read where nothing else tells which. */
    private static String named(String loadCase, String sentence) {
        return "“" + loadCase + "”: " + sentence;
    }

    private static String withoutCg(CaseBalance aboard) {
        return aboard.rows().isEmpty()
                ? "nothing is aboard: enter parts with their masses and stations."
                : "no part aboard has both a mass and a station: where it balances is not known.";
    }

    private String incomplete(CaseBalance aboard, CgAgainstBand basic) {
        List<String> missing = new ArrayList<>();
        List<PlacedRow> noMass = aboard.withoutMass();
        List<PlacedRow> stowed = aboard.withoutStation().stream()
                .filter(row -> aboard.isStowed(row.row()))
                .toList();
        List<PlacedRow> noStation = aboard.withoutStation().stream()
                .filter(row -> !aboard.isStowed(row.row()))
                .toList();
        if (!noMass.isEmpty()) {
            missing.add("no mass is known of " + BalanceWords.namesOf(noMass));
        }
        if (!noStation.isEmpty()) {
            missing.add(
                    "nobody has said where " + BalanceWords.namesOf(noStation) + plural(noStation, " sits", " sit"));
        }
        if (!stowed.isEmpty()) {
            missing.add("nobody has said where " + BalanceWords.namesOf(stowed) + plural(stowed, " sits", " sit")
                    + " when stowed");
        }
        return "where it balances is not known: " + String.join(", and ", missing) + ". The rest balances at "
                + words.station(basic.cg().xMm()) + ".";
    }

    private static String plural(List<PlacedRow> rows, String one, String several) {
        return rows.size() == 1 ? one : several;
    }

    private String judged(CgAgainstBand worse, CgAgainstBand basic, CgAgainstBand predicted) {
        return switch (worse.verdict()) {
            case BREAKS -> outside(worse) + other(worse, basic, predicted) + caution(worse);
            case TIGHT -> tight(worse) + other(worse, basic, predicted);
            case HOLDS, UNKNOWN -> inside(worse) + other(worse, basic, predicted);
        };
    }

    private String outside(CgAgainstBand worse) {
        return (worse.isForward() ? "nose-heavy by " : "tail-heavy by ") + words.distance(-worse.insideMm()) + ": at "
                + worse.state().word() + " mass it balances at "
                + words.station(worse.cg().xMm()) + ", " + limit(worse) + ".";
    }

    private String tight(CgAgainstBand worse) {
        return "only " + words.distance(worse.insideMm()) + " inside: at "
                + worse.state().word()
                + " mass it balances at " + words.station(worse.cg().xMm()) + ", " + limit(worse)
                + ", which is less than twice its standard uncertainty of " + words.distance(worse.uncertaintyMm())
                + ".";
    }

    private String inside(CgAgainstBand worse) {
        return "balances at " + words.station(worse.cg().xMm()) + " at "
                + worse.state().word() + " mass, " + words.distance(worse.insideMm()) + " inside: " + limit(worse)
                + ".";
    }

    private String limit(CgAgainstBand worse) {
        String end =
                (worse.isForward() ? "the forward limit" : "the aft limit") + " is " + words.station(worse.limitXMm());
        return worse.band().source() == BalanceBand.Source.DECLARED ? end : end + ", estimated from the neutral point";
    }

    private String other(CgAgainstBand worse, CgAgainstBand basic, CgAgainstBand predicted) {
        CgAgainstBand other = worse.state() == MassState.BASIC ? predicted : basic;
        if (other.cg().equals(worse.cg())) {
            return "";
        }
        return " At " + other.state().word() + " mass: "
                + words.station(other.cg().xMm()) + ".";
    }

    private static String caution(CgAgainstBand worse) {
        return worse.isForward() ? "" : " A tail-heavy aeroplane may not be controllable: do not fly it like this.";
    }
}
