package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which flight controller is aboard, and which line of the ledger it is. */
record FittedForm() implements OutputsForm {

    @Override
    public String view() {
        return "outputs/fitted";
    }

    @Override
    public void show(Build build, Shown fields) {
        FittedBoard fitted = build.outputs().fitted();
        fields.text("board", fitted.board()).text("part", fitted.part());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        return Map.of(
                "hasBoards",
                !build.outputs().boards().isEmpty(),
                "boards",
                OutputChoices.optional(
                        "none yet", OutputChoices.names(build.outputs().boards())),
                "parts",
                OutputChoices.optional(
                        "not said",
                        OutputChoices.names(build.lines().stream()
                                .sorted(Comparator.comparing((PartLine line) -> line.category() != Category.AVIONICS))
                                .toList())));
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        String board = entries.code(
                "board", OutputChoices.names(seen.outputs().boards()).keySet());
        String part = entries.code("part", OutputChoices.names(seen.lines()).keySet());
        if (!entries.areFine()) {
            return Optional.empty();
        }
        FittedBoard wanted = new FittedBoard(board, part);
        return Optional.of(Deed.fitting(title(seen, board), build -> build.withFittedBoard(wanted)));
    }

    private static String title(Build seen, @Nullable String code) {
        Board board = Elements.find(seen.outputs().boards(), code);
        return board == null ? "No flight controller chosen" : "Flight controller aboard: " + board.name();
    }
}
