package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The least and the most static margin of all flight cases, at either mass, against the one wanted. Where the band itself comes from
 * the margin wanted, the band judges and this rule is silent.
 */
record StaticMarginRule(BalanceStatement statement, NeutralPoint neutralPoint) {

    /** @param uncertaintyPercent standard uncertainty of the CG in per cent of the MAC; that of the neutral point is not known */
    private record Margin(CaseBalance aboard, MassState state, double percent, double uncertaintyPercent) {

        String where() {
            return BalanceWords.percentMac(percent) + " in “"
                    + aboard.loadCase().name() + "” at " + state.word() + " mass";
        }
    }

    static Optional<Finding> finding(BalanceStatement statement) {
        BalanceBand band = statement.shape().band();
        NeutralPoint neutralPoint = statement.shape().neutralPoint();
        return neutralPoint == null || (band != null && band.source() == BalanceBand.Source.DERIVED)
                ? Optional.empty()
                : new StaticMarginRule(statement, neutralPoint).finding();
    }

    private Optional<Finding> finding() {
        List<Margin> margins = statement.flight().stream()
                .flatMap(this::margins)
                .sorted(Comparator.comparing(Margin::percent))
                .toList();
        return margins.isEmpty()
                ? Optional.empty()
                : Optional.of(against(margins.get(0), margins.get(margins.size() - 1)));
    }

    private Stream<Margin> margins(CaseBalance aboard) {
        return Arrays.stream(MassState.values())
                .flatMap(state -> aboard.cg(state).stream()
                        .map(cg -> new Margin(
                                aboard,
                                state,
                                neutralPoint.staticMarginPercent(cg.xMm()),
                                100
                                        * uncertaintyMm(aboard, state)
                                        / neutralPoint.wing().macMm())));
    }

    private static double uncertaintyMm(CaseBalance aboard, MassState state) {
        return aboard.uncertaintyXMm(state).orElse(0);
    }

    private Finding against(Margin least, Margin most) {
        StaticMargin wanted = statement.shape().geometry().staticMargin();
        if (!statement.flight().stream().allMatch(CaseBalance::isKnown)) {
            return finding(
                    least, null, Verdict.UNKNOWN, "The static margin is not known: parts lack a mass or a station. ");
        }
        if (least.percent() <= 0) {
            String sentence = "The CG lies at or behind the neutral point, static margin " + least.where()
                    + ": not stable, do not fly it like this. ";
            return finding(least, wanted, Verdict.BREAKS, sentence);
        }
        if (wanted != null && least.percent() < wanted.leastPercent()) {
            String sentence = "The static margin is " + least.where() + ", less than the "
                    + BalanceWords.percentMac(wanted.leastPercent()) + " you want. ";
            return finding(least, wanted, Verdict.TIGHT, sentence);
        }
        double atLeast = wanted == null ? 0 : wanted.leastPercent();
        if (least.percent() - atLeast < 2 * least.uncertaintyPercent()) {
            String sentence = "The least static margin is " + least.where() + ", above the "
                    + BalanceWords.percentMac(atLeast)
                    + " there has to be by less than twice its standard uncertainty of "
                    + BalanceWords.percentMac(least.uncertaintyPercent()) + ". ";
            return finding(least, wanted, Verdict.TIGHT, sentence);
        }
        if (wanted != null && most.percent() > wanted.mostPercent()) {
            String sentence = "The static margin is " + most.where() + ", more than the "
                    + BalanceWords.percentMac(wanted.mostPercent()) + " you want: stable, but sluggish in pitch. ";
            return finding(most, wanted, Verdict.TIGHT, sentence);
        }
        return finding(least, wanted, Verdict.HOLDS, "The least static margin is " + least.where() + ". ");
    }

    private Finding finding(Margin worst, @Nullable StaticMargin wanted, Verdict verdict, String sentence) {
        double percent = worst.percent();
        boolean over = wanted != null && percent > wanted.mostPercent();
        Double limit = wanted == null ? null : over ? wanted.mostPercent() : wanted.leastPercent();
        Double left = limit == null ? null : over ? limit - percent : percent - limit;
        return new BalanceAgainst(BalanceFindings.STATIC_MARGIN, "Static margin", null, percent, limit, left, "% MAC")
                .finding(verdict, sentence + neutralPoint.caution());
    }
}
