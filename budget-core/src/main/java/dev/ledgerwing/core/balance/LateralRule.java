package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.Stream;

/** Whether the CG of a flight case lies off the centre line by more than the limit, at the mass at which it lies farthest. */
record LateralRule(BalanceStatement statement, BalanceWords words) {

    Stream<Finding> findings() {
        return statement.flight().stream()
                .filter(CaseBalance::isKnown)
                .flatMap(aboard -> Arrays.stream(MassState.values())
                        .flatMap(state -> aboard.cg(state).stream())
                        .map(Cg::yMm)
                        .max(Comparator.comparing(Math::abs))
                        .filter(yMm -> Math.abs(yMm) > limitMm())
                        .map(yMm -> finding(aboard, yMm))
                        .stream());
    }

    private double limitMm() {
        return statement.shape().lateralLimit().mm();
    }

    private Finding finding(CaseBalance aboard, double yMm) {
        boolean right = yMm > 0;
        String sentence = "The CG lies " + words.distance(Math.abs(yMm)) + " to the " + (right ? "right" : "left")
                + " of the centre line, more than " + words.length(limitMm())
                + ": it needs aileron trim, or ballast on the "
                + (right ? "left" : "right") + ".";
        return BalanceAgainst.inMm(
                        BalanceFindings.LATERAL,
                        aboard.loadCase().name(),
                        yMm,
                        right ? limitMm() : -limitMm(),
                        limitMm() - Math.abs(yMm))
                .finding(Verdict.TIGHT, sentence);
    }
}
