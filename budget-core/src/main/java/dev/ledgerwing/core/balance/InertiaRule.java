package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;

/** Whether the moments of inertia of the design case are those of something as flat as an aeroplane. */
record InertiaRule(BalanceStatement statement, BalanceWords words) {

    /** A few parts say nothing about the shape yet: Ledgerwing's own choice. */
    private static final int FEWEST_PARTS = 10;

    Optional<Finding> finding() {
        CaseBalance design = statement.design();
        return design.rows().size() < FEWEST_PARTS || !design.isKnown()
                ? Optional.empty()
                : design.inertia()
                        .filter(inertia -> !inertia.aboutCg().isFlat())
                        .map(this::doubtful);
    }

    private Finding doubtful(Inertia inertia) {
        InertiaTensor tensor = inertia.aboutCg();
        double massKg = inertia.massKg();
        String sentence = "The masses lie " + words.length(tensor.rmsHeightMm(massKg)) + " above or below the CG on"
                + " (square) average, but only " + words.length(tensor.rmsLengthMm(massKg)) + " along and "
                + words.length(tensor.rmsWidthMm(massKg))
                + " across: too tall for an aeroplane. Are the heights (z) of the stations right?";
        return BalanceAgainst.nothing("balance.inertia", "Moments of inertia").finding(Verdict.TIGHT, sentence);
    }
}
