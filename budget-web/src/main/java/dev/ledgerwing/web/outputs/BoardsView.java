package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.outputs.BoardComparison;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.outputs.PortKind;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * The candidates side by side: need against supply, kind by kind, and what each would add.
 *
 * @param rows what is compared, each with a cell for every board in the order of the heads
 */
record BoardsView(List<Head> heads, List<Row> rows) {

    /** A candidate. */
    record Head(String code, String name, boolean isAboard, Verdict verdict) {}

    /** @param need what the parts need; empty where nothing is needed of it */
    record Row(String title, String need, List<BoardCell> cells) {}

    static BoardsView of(OutputStatement statement, Figures figures) {
        List<Row> rows = new ArrayList<>();
        Arrays.stream(PortKind.values()).map(kind -> ports(kind, statement)).forEach(rows::add);
        rows.add(row("All of them in banks", statement, BoardCell::banks));
        rows.add(row("Mass", statement, board -> BoardCell.mass(board, figures)));
        rows.add(row(
                "Typical current",
                statement,
                board -> BoardCell.current(board.board().typicalA(), board.typicalDifferenceA())));
        rows.add(row(
                "Peak current",
                statement,
                board -> BoardCell.current(board.board().peakA(), board.peakDifferenceA())));
        return new BoardsView(heads(statement), rows);
    }

    private static List<Head> heads(OutputStatement statement) {
        return statement.boards().stream()
                .map(board -> new Head(board.board().code(), board.board().name(), board.aboard(), board.verdict()))
                .toList();
    }

    private static Row ports(PortKind kind, OutputStatement statement) {
        int need = statement.need().need(kind);
        return new Row(
                title(kind),
                Integer.toString(need),
                statement.boards().stream()
                        .map(board -> BoardCell.ports(board, kind))
                        .toList());
    }

    private static String title(PortKind kind) {
        String plural = kind.plural();
        return Character.toUpperCase(plural.charAt(0)) + plural.substring(1);
    }

    private static Row row(String title, OutputStatement statement, Function<BoardComparison, BoardCell> cell) {
        return new Row(title, "", statement.boards().stream().map(cell).toList());
    }
}
