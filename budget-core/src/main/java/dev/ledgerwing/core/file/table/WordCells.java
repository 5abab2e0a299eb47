package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import java.util.Optional;

/** Reads cells that hold one of a few words. A word that is not understood is pointed out and counts as none. */
final class WordCells {

    private static final WordList<Basis> BASES = WordList.load("basis-words.txt", Basis.class);
    private static final WordList<FitState> STATES = WordList.load("state-words.txt", FitState.class);

    private final Sheet sheet;

    WordCells(Sheet sheet) {
        this.sheet = sheet;
    }

    Optional<Basis> basis(TableRow row) {
        Cell cell = sheet.cell(row, Meaning.BASIS);
        return said(cell, BASES.meaning(cell.text()), "does not tell where the mass comes from: it counts as guessed.");
    }

    Optional<FitState> state(TableRow row) {
        Cell cell = sheet.cell(row, Meaning.STATE);
        return said(
                cell, STATES.meaning(cell.text()), "does not tell how far the part has come: it counts as planned.");
    }

    Optional<Category> category(TableRow row) {
        Cell cell = sheet.cell(row, Meaning.CATEGORY);
        return said(
                cell, CategoryWords.given(cell.text()), "is no category that is known: one is proposed from the name.");
    }

    private <T> Optional<T> said(Cell cell, Optional<T> meaning, String otherwise) {
        if (cell.isFilled() && meaning.isEmpty()) {
            sheet.notes().notice(cell, cell.quoted() + " " + otherwise);
        }
        return meaning;
    }
}
