package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;

/**
 * What a weigh-in says, in plain sentences in a member's units.
 *
 * @param scales what the scales say, and what they cannot tell
 * @param ledger what the ledger says of the same
 * @param difference what lies between them, what that means and what of it is booked already
 * @param notes what one has to know to read all this
 * @param questions what looks as if something had gone wrong
 */
public record WeighInWords(
        List<String> scales, List<String> ledger, List<String> difference, List<String> notes, List<String> questions) {

    static final WeighInWords NONE = new WeighInWords(List.of(), List.of(), List.of(), List.of(), List.of());

    public WeighInWords {
        scales = List.copyOf(scales);
        ledger = List.copyOf(ledger);
        difference = List.copyOf(difference);
        notes = List.copyOf(notes);
        questions = List.copyOf(questions);
    }

    static WeighInWords of(WeighInReport report, Build build, Figures figures) {
        return report.reading()
                .answer()
                .map(answer -> new WeighInWords(
                        new ScalesWords(figures).of(answer),
                        new LedgerWords(report, figures).all(),
                        new DifferenceWords(report, figures).all(),
                        new Notes(report, answer, figures).all(),
                        new Questions(report, answer, build, figures).all()))
                .orElse(NONE);
    }
}
