package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.outputs.AddressClash;
import dev.ledgerwing.core.outputs.BoardComparison;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.outputs.PortRow;
import dev.ledgerwing.core.quantity.Figures;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One candidate against what the parts need, to stand beside the others.
 *
 * @param aboard whether it is the one that was chosen
 * @param ports each kind of connection in the same order for all boards
 * @param mass difference to the part aboard
 * @param current difference of the typical and the peak current
 * @param lacks what it is short of, a line each
 */
public record BoardEntry(
        String name,
        boolean aboard,
        List<PortCell> ports,
        String mass,
        String current,
        List<String> lacks,
        VerdictMark verdict) {

    /** One kind of connection: {@code 16 of 14}. */
    public record PortCell(String kind, String need, String supply, VerdictMark verdict) {}

    public BoardEntry {
        ports = List.copyOf(ports);
        lacks = List.copyOf(lacks);
    }

    static List<BoardEntry> of(OutputStatement statement, Figures units) {
        return statement.boards().stream().map(board -> of(board, units)).toList();
    }

    private static BoardEntry of(BoardComparison board, Figures units) {
        return new BoardEntry(
                board.board().name(),
                board.aboard(),
                board.ports().stream().map(BoardEntry::cell).toList(),
                board.massDifference() == null ? "not known" : units.signedMass(board.massDifference()),
                signed(board.typicalDifferenceA()) + " / " + signed(board.peakDifferenceA()),
                lacks(board),
                VerdictMark.of(board.verdict()));
    }

    private static PortCell cell(PortRow row) {
        Integer supply = row.supply();
        String has = supply == null ? "not known" : row.kind().isBus() ? buses(supply) : String.valueOf(supply);
        return new PortCell(row.kind().plural(), String.valueOf(row.need()), has, VerdictMark.of(row.verdict()));
    }

    private static String buses(int supply) {
        return supply == 1 ? "1 bus" : supply + " buses";
    }

    private static List<String> lacks(BoardComparison board) {
        List<String> lacks = new ArrayList<>();
        board.ports().stream()
                .filter(row -> row.shortage() > 0)
                .forEach(row -> lacks.add(row.kind().counted(row.shortage()) + " short"));
        if (board.withoutBank() > 0) {
            lacks.add(board.withoutBank() + (board.withoutBank() == 1 ? " more finds no bank" : " more find no bank"));
        } else if (!board.plan().isDecided() && !board.board().banks().isEmpty()) {
            lacks.add("not known whether every output finds a bank");
        }
        board.clashes().stream().map(AddressClash::sentence).forEach(lacks::add);
        return lacks;
    }

    private static String signed(@Nullable Double amperes) {
        return amperes == null ? "not known" : (amperes > 0 ? "+" : "") + Figures.number(amperes, 2) + "\u2009A";
    }
}
