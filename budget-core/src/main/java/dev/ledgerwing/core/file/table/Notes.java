package dev.ledgerwing.core.file.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what there is to say about cells while a table is read. */
final class Notes {

    private static final Comparator<CellNote> BY_PLACE =
            Comparator.comparingInt(CellNote::row).thenComparingInt(CellNote::column);

    private final List<CellNote> notices = new ArrayList<>();
    private final List<CellNote> problems = new ArrayList<>();

    void notice(Cell cell, String sentence) {
        notices.add(note(cell, sentence));
    }

    void problem(Cell cell, String sentence) {
        problems.add(note(cell, sentence));
    }

    int problemCount() {
        return problems.size();
    }

    int noticeCount() {
        return notices.size();
    }

    /** Takes back the notices after the first {@code count}. */
    void keepNotices(int count) {
        notices.subList(count, notices.size()).clear();
    }

    List<CellNote> notices() {
        return notices.stream().sorted(BY_PLACE).toList();
    }

    List<CellNote> problems() {
        return problems.stream().sorted(BY_PLACE).toList();
    }

    private static CellNote note(Cell cell, String sentence) {
        return new CellNote(cell.row(), Math.max(1, cell.column()), cell.text(), sentence);
    }
}
