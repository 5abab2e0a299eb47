package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.outputs.BoardComparison;
import dev.ledgerwing.core.outputs.PortKind;
import dev.ledgerwing.core.outputs.PortRow;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What one candidate has of one thing.
 *
 * @param note the shortage, or the difference to what is aboard; empty where there is nothing to say
 * @param verdict null where nothing is judged
 */
record BoardCell(String figure, String note, @Nullable Verdict verdict) {

    static BoardCell ports(BoardComparison board, PortKind kind) {
        PortRow row = board.port(kind);
        String clashes = kind == PortKind.BUS_ADDRESS ? clashes(board) : "";
        Verdict verdict = row.need() == 0 ? null : clashes.isEmpty() ? row.verdict() : Verdict.BREAKS;
        return new BoardCell(supply(row), clashes.isEmpty() ? shortage(row) : clashes, verdict);
    }

    private static String supply(PortRow row) {
        Integer supply = row.supply();
        if (supply == null) {
            return Pulses.NOT_KNOWN;
        }
        return row.kind().isBus() ? supply + (supply == 1 ? " bus" : " buses") : supply.toString();
    }

    private static String shortage(PortRow row) {
        return row.shortage() == 0 ? "" : row.shortage() + " short";
    }

    private static String clashes(BoardComparison board) {
        return board.clashes().stream()
                .map(clash -> clash.address() + " is " + clash.parts().size() + " times there")
                .collect(Collectors.joining("; "));
    }

    /** Whether rates and kinds of pulse let every output find a bank. */
    static BoardCell banks(BoardComparison board) {
        if (board.board().banks().isEmpty()) {
            return new BoardCell(Pulses.NOT_KNOWN, "", Verdict.UNKNOWN);
        }
        int left = board.plan().leftOver().size();
        if (left > 0) {
            return board.plan().leftAtLeast() > 0
                    ? new BoardCell(left + " left over", "", Verdict.BREAKS)
                    : new BoardCell(Pulses.NOT_KNOWN, "too many ways to try them all", Verdict.UNKNOWN);
        }
        int slow = board.plan().belowWish();
        String missing = board.banks() == Verdict.UNKNOWN ? "rates or kinds of pulse not known" : "";
        return new BoardCell("yes", slow > 0 ? slow + " slower than wanted" : missing, board.banks());
    }

    static BoardCell mass(BoardComparison board, Figures figures) {
        Mass mass = board.board().unitMass();
        Mass difference = board.massDifference();
        return new BoardCell(
                mass == null ? Pulses.NOT_KNOWN : figures.mass(mass),
                difference == null || difference.mg() == 0 ? "" : figures.signedMass(difference),
                null);
    }

    static BoardCell current(@Nullable Double amperes, @Nullable Double difference) {
        return new BoardCell(
                amperes == null ? Pulses.NOT_KNOWN : PowerWords.amperes(amperes),
                difference == null || Math.abs(difference) < 0.0005 ? "" : signed(difference),
                null);
    }

    private static String signed(double amperes) {
        return (amperes < 0 ? "−" : "+") + PowerWords.amperes(Math.abs(amperes));
    }
}
