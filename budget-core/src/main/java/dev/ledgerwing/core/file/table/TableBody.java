package dev.ledgerwing.core.file.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The rows below the headings, read from top to bottom. */
record TableBody(List<Entry> entries) {

    static TableBody read(List<SortedRow> rows, Sheet sheet, PartReader reader) {
        List<Entry> entries = new ArrayList<>();
        TextCells texts = new TextCells(sheet);
        String section = null;
        for (SortedRow sorted : rows) {
            TableRow row = sorted.row();
            PartRow part = null;
            switch (sorted.kind()) {
                case HEADING -> section = texts.heading(row.filled().get(0));
                case TOTAL -> section = null;
                case FOOTNOTE -> footnote(row, sheet);
                case PART -> part = reader.read(row, section).orElse(null);
            }
            entries.add(new Entry(sorted, part));
        }
        sayWhichHeadingsAreEmpty(entries, sheet);
        return new TableBody(List.copyOf(entries));
    }

    List<TablePart> parts() {
        return partRows().map(PartRow::part).toList();
    }

    Stream<PartRow> partRows() {
        return entries.stream().map(Entry::part).filter(Objects::nonNull);
    }

    private static void footnote(TableRow row, Sheet sheet) {
        Cell cell = row.filled().get(0);
        sheet.notes().notice(cell, cell.quoted() + " stands alone below the last sum and is not read.");
    }

    private static void sayWhichHeadingsAreEmpty(List<Entry> entries, Sheet sheet) {
        for (int i = 0; i < entries.size(); i++) {
            boolean empty = i + 1 == entries.size() || !entries.get(i + 1).isPartRow();
            if (entries.get(i).sorted().kind() == SortedRow.Kind.HEADING && empty) {
                Cell cell = entries.get(i).sorted().row().filled().get(0);
                sheet.notes()
                        .notice(
                                cell,
                                cell.quoted()
                                        + " stands alone in its row and no part below it: it is taken as a heading,"
                                        + " not as a part.");
            }
        }
    }
}
