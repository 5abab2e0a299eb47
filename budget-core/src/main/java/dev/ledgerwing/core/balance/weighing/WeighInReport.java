package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.build.WeighIn.LedgerWeighed;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;
import java.util.Optional;

/**
 * A weigh-in held against the ledger, ready to be shown.
 *
 * @param weighIn as it is, or would be, in the record
 * @param reading what the scales say, or why the readings were refused
 * @param ledger what the ledger says today of the parts that are still the same
 * @param revised whether that is no longer what the ledger said on the day
 * @param comparison scales against the ledger of the day; empty when the readings were refused
 * @param implied where the difference would sit; empty when it is too small to say
 * @param proposal what to book; empty when refused, when the ledger was revised since, or when a newer weigh-in tells more
 */
public record WeighInReport(
        WeighIn weighIn,
        ScalesReading reading,
        LedgerSide ledger,
        boolean revised,
        Optional<Comparison> comparison,
        Optional<ImpliedStation> implied,
        Optional<BookingProposal> proposal,
        WeighInWords words) {

    /** Of a weighing that is not in the record yet. {@code revision} and {@code fingerprint} name the ledger it is held against. */
    public static WeighInReport of(Build build, WeighInDraft draft, LedgerRevision revision, Figures figures) {
        LedgerSide ledger = draft.ledger(build);
        WeighIn weighIn = draft.against(build, revision.number(), revision.fingerprint());
        return report(build, weighIn, new RecordedLedger(ledger, false), figures);
    }

    /** The revision that was the newest when the scales were read. */
    public record LedgerRevision(int number, String fingerprint) {}

    /** Of a weigh-in of the record. */
    public static WeighInReport of(Build build, WeighIn weighIn, Figures figures) {
        return report(build, weighIn, RecordedLedger.of(build, weighIn), figures);
    }

    /** Of every weigh-in of the record, the newest first. */
    public static List<WeighInReport> all(Build build, Figures figures) {
        return WeighInOrder.newestFirst(build.weighIns()).stream()
                .map(weighIn -> of(build, weighIn, figures))
                .toList();
    }

    private static WeighInReport report(Build build, WeighIn weighIn, RecordedLedger recorded, Figures figures) {
        LedgerSide ledger = recorded.side();
        ScalesReading reading = ScalesReading.of(weighIn, ledger, build, figures);
        Optional<Comparison> comparison = reading.answer()
                .map(answer -> recorded.revised()
                        ? ofTheDay(answer, weighIn.ledger())
                        : new Comparison(
                                answer.joint(), new Bookkeeping(build, weighIn, ledger, answer).reference(), true));
        Optional<BookingProposal> proposal = recorded.revised() || !WeighInOrder.isNewest(build, weighIn)
                ? Optional.empty()
                : reading.answer()
                        .map(answer -> new Bookkeeping(build, weighIn, ledger, answer).proposal(isOff(comparison)));
        Optional<ImpliedStation> implied = comparison.flatMap(each -> ImpliedStation.of(each, build));
        WeighInReport silent = new WeighInReport(
                weighIn, reading, ledger, recorded.revised(), comparison, implied, proposal, WeighInWords.NONE);
        return silent.saying(WeighInWords.of(silent, build, figures));
    }

    private static Comparison ofTheDay(ScalesAnswer answer, LedgerWeighed then) {
        return new Comparison(answer.joint(), LedgerSide.joint(then.mass(), then.moments(), List.of()), false);
    }

    private static boolean isOff(Optional<Comparison> comparison) {
        return comparison.map(Comparison::worst).orElse(Significance.AGREES) != Significance.AGREES;
    }

    private WeighInReport saying(WeighInWords said) {
        return new WeighInReport(weighIn, reading, ledger, revised, comparison, implied, proposal, said);
    }

    public boolean isRefused() {
        return reading.answer().isEmpty();
    }
}
