package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.radio.plan.PlanAnswer.Outcome;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.RadioPictures;
import dev.ledgerwing.web.airframe.FindingRow;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The radio page of one airframe, ready to be shown.
 *
 * @param isEmpty whether nothing of the radio is recorded
 * @param moreFindings how many findings are left out, none of them worse than those shown
 * @param squeeze null unless it does not fit
 * @param grid what each phase asks of each switched function; ready markup of our own, empty where there is nothing to ask
 */
record RadioView(
        boolean isEmpty,
        List<FirstStep> steps,
        Verdict verdict,
        String sentence,
        List<FindingRow> findings,
        int moreFindings,
        PlanView plan,
        @Nullable SqueezeView squeeze,
        List<CouplingRow> couplings,
        PairView pairs,
        String grid,
        List<LossView> loss,
        List<GivenUpRow> givenUp,
        List<LinkRow> link,
        List<ControlRow> controls) {

    /** What is to be done something about, or not known yet. */
    public List<FindingRow> pressing() {
        return findings.stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS)
                .toList();
    }

    /** What is fine. */
    public List<FindingRow> holding() {
        return findings.stream()
                .filter(finding -> finding.verdict() == Verdict.HOLDS)
                .toList();
    }

    /** Whether something has to be recorded before a plan can be found. */
    public boolean hasFirstSteps() {
        return steps.stream().anyMatch(step -> !step.isDone());
    }

    static RadioView of(BuildReview review) {
        Build build = review.build();
        RadioStatement statement = review.radio();
        Radio radio = build.radio();
        RadioNames names = RadioNames.of(build);
        List<FindingRow> findings = FindingRow.of(review, Budget.RADIO);
        return new RadioView(
                radio.equals(Radio.NONE),
                FirstStep.of(build),
                review.verdict(Budget.RADIO),
                VerdictWords.of(statement),
                findings,
                review.findings(Budget.RADIO).size() - findings.size(),
                PlanView.of(statement, names),
                statement.proposed().outcome() == Outcome.DOES_NOT_FIT ? SqueezeView.of(build) : null,
                CouplingRow.of(statement.couplings()),
                PairView.of(radio, statement.pairs()),
                build.phases().isEmpty() || radio.functions().isEmpty()
                        ? ""
                        : RadioPictures.grid(statement).html(),
                LossView.of(statement.onLoss()),
                GivenUpRow.of(build, names),
                LinkRow.of(radio.link(), statement.frame()),
                ControlRow.of(radio, statement.inForce(), names));
    }
}
