package dev.ledgerwing.core.file.table;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Tables written by hand to test with. */
final class Tables {

    private Tables() {}

    static TableReading read(String... rows) {
        return PartsTable.read(bytes(rows));
    }

    static byte[] bytes(String... rows) {
        return (String.join("\r\n", rows) + "\r\n").getBytes(StandardCharsets.UTF_8);
    }

    static List<String> places(List<CellNote> notes) {
        return notes.stream().map(note -> note.row() + ":" + note.column()).toList();
    }
}
