package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/** A record with its review, as headlines are taken from it. */
record Judged(Build build, BuildReview review) {

    static Judged of(Build build) {
        return new Judged(build, BuildReview.of(build));
    }

    @Nullable
    Long targetMg() {
        Mass target = build.budget().targetMass();
        return target == null ? null : target.mg();
    }

    long basicMg() {
        return review.mass().basic().mg();
    }

    long predictedMg() {
        return review.mass().predicted().mg();
    }

    Verdict balanceVerdict() {
        return review.verdict(Budget.BALANCE);
    }

    CgFigure balance() {
        return CgFigure.of(review.figures());
    }

    Verdict powerVerdict() {
        return review.verdict(Budget.POWER);
    }

    PowerFigure power() {
        return PowerFigure.of(review.figures());
    }

    Verdict radioVerdict() {
        return review.verdict(Budget.RADIO);
    }

    RadioFigure radio() {
        return RadioFigure.of(review.figures());
    }

    Verdict outputsVerdict() {
        return review.verdict(Budget.OUTPUTS);
    }

    OutputsFigure outputs() {
        return OutputsFigure.of(review.figures());
    }

    Verdict massVerdict() {
        return review.verdicts().getOrDefault(Budget.MASS, Verdict.UNKNOWN);
    }
}
