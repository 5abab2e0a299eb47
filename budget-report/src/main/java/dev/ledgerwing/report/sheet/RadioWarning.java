package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.radio.explain.Explanation;
import dev.ledgerwing.core.radio.explain.Reason;
import dev.ledgerwing.core.radio.explain.Relaxation;
import dev.ledgerwing.core.radio.explain.Relaxations;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.OutputWords;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Why nobody may set up a transmitter by a sheet. */
final class RadioWarning {

    private static final String FOOT = "NO VALID PLAN";

    private final BuildReview review;
    private final RadioStatement radio;

    RadioWarning(BuildReview review) {
        this.review = review;
        this.radio = review.radio();
    }

    /** Null = the sheet can be worked from. */
    @Nullable
    SheetWarning warning() {
        return switch (radio.proposed().outcome()) {
            case DOES_NOT_FIT -> doesNotFit();
            case NOT_KNOWN ->
                new SheetWarning(
                        radio.isUndecided()
                                ? "No plan: not known whether one fits"
                                : "No plan: not everything is recorded",
                        FOOT,
                        radio.proposed().missing().stream()
                                .map(missing -> (radio.isUndecided() ? "Not decided: " : "To be recorded first: ")
                                        + missing + ".")
                                .toList(),
                        List.of());
            case FITS -> fits();
        };
    }

    private SheetWarning doesNotFit() {
        ChannelProblem problem = ChannelProblem.of(review.build());
        Relaxations relaxations = Relaxations.of(problem);
        Stream<String> reasons = Explanation.of(problem).reasons().stream().map(Reason::sentence);
        Stream<String> none = relaxations.noneSuffices()
                ? Stream.of("No single concession is enough.")
                : relaxations.undecided()
                        ? Stream.of("Not of every concession is it known whether it is enough: "
                                + "there are too many combinations.")
                        : Stream.empty();
        return new SheetWarning(
                "This does not fit: no plan to fly with",
                FOOT,
                Stream.concat(reasons, none).toList(),
                ways(relaxations.all()));
    }

    /** Those that leave alone what the flight hangs on; the others are many and the last to be thought of. */
    private static List<String> ways(List<Relaxation> relaxations) {
        List<Relaxation> mild = relaxations.stream()
                .filter(relaxation -> relaxation.caution() == null)
                .toList();
        int others = relaxations.size() - mild.size();
        Stream<String> more = others == 0
                ? Stream.empty()
                : Stream.of(OutputWords.count(others, "more way")
                        + " would touch what the flight itself hangs on: not listed here.");
        return Stream.concat(mild.stream().map(each -> each.what() + " " + each.loses()), more)
                .toList();
    }

    private @Nullable SheetWarning fits() {
        if (!radio.isRecorded()) {
            return radio.inForce().isEmpty()
                    ? null
                    : new SheetWarning(
                            "Only proposed: these channels are not recorded",
                            "ONLY PROPOSED",
                            List.of("A plan fits and is printed here, but the team has not taken it yet."),
                            List.of());
        }
        List<String> broken = review.findings(Budget.RADIO).stream()
                .filter(finding -> finding.verdict() == Verdict.BREAKS)
                .map(Finding::sentence)
                .toList();
        if (broken.isEmpty() && !radio.faults().isEmpty()) {
            return new SheetWarning(
                    "No plan to fly with: not known whether these channels do what is asked",
                    FOOT,
                    List.of("There are too many combinations to decide it."),
                    List.of());
        }
        return broken.isEmpty()
                ? null
                : new SheetWarning("Something breaks: no plan to fly with", FOOT, broken, List.of());
    }
}
