package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What there is to say about outputs and ports, rule by rule. */
public final class OutputFindings {

    /** Connections of one kind: need against supply. */
    public static final String PORTS = "outputs.ports";

    static final String NOTHING = "outputs.nothing";
    static final String BOARD = "outputs.board";

    private OutputFindings() {}

    /** Every finding; where nothing is recorded, one that says where to begin. */
    public static List<Finding> of(OutputStatement statement) {
        if (statement.isBlank()) {
            return List.of(about(
                    NOTHING,
                    Verdict.UNKNOWN,
                    "Outputs",
                    "Nothing is recorded of outputs and ports: begin with the flight controllers that might be fitted, and with"
                            + " what each part needs of them."));
        }
        if (statement.fitted() == null) {
            return List.of(about(
                    BOARD,
                    Verdict.UNKNOWN,
                    "Flight controller",
                    statement.boards().isEmpty()
                            ? "No flight controller is recorded: what the parts need has nothing to be held against."
                            : "No flight controller is chosen yet: which of the candidates is aboard is not known."));
        }
        return Stream.of(
                        new NeedRule(statement).findings(),
                        new PortRule(statement).findings(),
                        new BankRule(statement).findings(),
                        new PlaceRule(statement).findings())
                .flatMap(findings -> findings)
                .toList();
    }

    static Finding about(String code, Verdict verdict, String subject, String sentence) {
        return about(code, verdict, subject, null, sentence);
    }

    static Finding about(String code, Verdict verdict, String subject, @Nullable String line, String sentence) {
        return new Finding(code, Budget.OUTPUTS, verdict, subject, line, null, null, null, "", sentence, List.of());
    }

    /** Something counted against what there is. */
    static Finding counted(String code, Verdict verdict, String subject, double need, double supply, String sentence) {
        return new Finding(
                code, Budget.OUTPUTS, verdict, subject, null, need, supply, supply - need, "", sentence, List.of());
    }
}
