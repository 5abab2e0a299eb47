package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.quantity.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What builders do with a weigh-in, each as the record after it. */
public final class WeighInDeeds {

    private WeighInDeeds() {}

    /** What becomes of the difference between scales and ledger. */
    public enum Choice {
        /** Booked when it is more than the scales can be off, else cleared. */
        AS_ADVISED,
        /** The scales are right to the last digit: booked whatever its size. */
        BOOK,
        /** The ledger is right: nothing stays booked for what was weighed. */
        CLEAR,
        /** Bookings stay as they are. */
        LEAVE
    }

    /**
     * Keeps a weigh-in behind the others, and books what it says.
     *
     * @throws IllegalArgumentException when the readings are refused, or the record refuses what was entered
     */
    public static Build recorded(
            Build build, WeighInDraft draft, WeighInReport.LedgerRevision revision, Choice choice) {
        WeighInReport report = WeighInReport.of(build, draft, revision, Figures.METRIC);
        if (report.isRefused()) {
            throw new IllegalArgumentException(
                    report.reading().refused().stream().map(Problem::toString).collect(Collectors.joining("; ")));
        }
        List<WeighIn> weighIns = new ArrayList<>(build.weighIns());
        weighIns.add(report.weighIn());
        return booked(build, report, choice).withWeighIns(weighIns);
    }

    /** Books what a weigh-in of the record says, or clears that. Changes nothing when there is nothing to propose any more. */
    public static Build booked(Build build, WeighInReport report, Choice choice) {
        return report.proposal()
                .map(proposal -> switch (choice) {
                    case AS_ADVISED -> (proposal.advised() ? proposal.ifBooked() : proposal.ifCleared()).in(build);
                    case BOOK -> proposal.ifBooked().in(build);
                    case CLEAR -> proposal.ifCleared().in(build);
                    case LEAVE -> build;
                })
                .orElse(build);
    }
}
