package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a drawing of a flight controller's outputs shows: texts are ready, nothing in it needs computing.
 *
 * @param board its name; empty = none is chosen
 * @param sentences what stands at the head, a sentence each
 * @param loose what is on no output of the board
 */
public record BanksView(
        String airframe, String board, List<String> sentences, List<BankMark> banks, List<LeadMark> loose) {

    /**
     * A bank: all its outputs have one rate and one kind of pulse.
     *
     * @param verdict null = it has not been held against anything
     */
    public record BankMark(
            String name, List<String> facts, @Nullable Verdict verdict, List<PinMark> pins) {

        public BankMark {
            facts = List.copyOf(facts);
            pins = List.copyOf(pins);
        }
    }

    /** A numbered output and what hangs on it: nothing, one lead, or wrongly more. */
    public record PinMark(int number, List<LeadMark> leads) {

        public PinMark {
            leads = List.copyOf(leads);
        }

        public boolean isFree() {
            return leads.isEmpty();
        }
    }

    /**
     * What hangs on an output.
     *
     * @param pieces how many; several hang on a Y-lead
     * @param verdict null = nothing is wrong with it that is known
     * @param fault what is wrong; empty = nothing
     */
    public record LeadMark(
            String name,
            int pieces,
            List<String> facts,
            @Nullable Verdict verdict,
            String fault) {

        public LeadMark {
            facts = List.copyOf(facts);
        }
    }

    public BanksView {
        sentences = List.copyOf(sentences);
        banks = List.copyOf(banks);
        loose = List.copyOf(loose);
    }
}
