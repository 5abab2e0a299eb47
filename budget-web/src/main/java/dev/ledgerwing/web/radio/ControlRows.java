package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Control.Kind;
import dev.ledgerwing.web.forms.CodedRows;
import dev.ledgerwing.web.forms.Entries;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the controls as typed. A mix has as many positions as its two switches together. */
final class ControlRows {

    private static final List<String> OF_A_CONTROL = List.of("code", "name", "positions", "coarse", "fine");
    private static final int FEWEST = 2;

    private final CodedRows<Control> rows;
    private final Entries entries;
    private final List<String> codes;
    /** Positions of the switches that are as they should be. */
    private final Map<String, Integer> positions = new HashMap<>();

    private final Map<String, String> names = new HashMap<>();

    ControlRows(CodedRows<Control> rows, Entries entries) {
        this.rows = rows;
        this.entries = entries;
        this.codes = rows.codes();
    }

    /** The switches as typed, from code to name. */
    static Map<String, String> switches(CodedRows<Control> rows) {
        Map<String, String> switches = new LinkedHashMap<>();
        List<String> codes = rows.codes();
        for (int i = 0; i < rows.count(); i++) {
            if (rows.typed().text(rows.row(i) + ".kind").equals(Kind.SWITCH.name())
                    && !codes.get(i).isEmpty()) {
                switches.put(codes.get(i), rows.typed().text(rows.row(i) + ".name"));
            }
        }
        return switches;
    }

    /** The switches first, since what is mixed of them hangs on their positions. */
    List<Control> controls() {
        Map<Integer, Control> read = new HashMap<>();
        for (boolean mixed : new boolean[] {false, true}) {
            for (int i = 0; i < rows.count(); i++) {
                String row = rows.row(i);
                if (isMixed(row) == mixed && !entries.typed().isBlank(row, OF_A_CONTROL)) {
                    Control control = control(row, codes.get(i));
                    if (control != null) {
                        read.put(i, control);
                    }
                }
            }
        }
        return read.keySet().stream().sorted().map(read::get).toList();
    }

    private boolean isMixed(String row) {
        return entries.typed().text(row + ".kind").equals(Kind.MIXED.name());
    }

    private @Nullable Control control(String row, String code) {
        String name = name(row + ".name");
        Kind kind = entries.choice(row + ".kind", Kind.values());
        if (kind == Kind.MIXED) {
            return mix(row, code, name);
        }
        Integer places = kind == Kind.SWITCH ? (Integer) positions(row, code) : null;
        return entries.areFine() ? new Control(code, name, kind, places, List.of()) : null;
    }

    private String name(String field) {
        String name = entries.name(field, "Please name the control.");
        String first = names.putIfAbsent(name.toLowerCase(Locale.ROOT), field);
        if (first != null && entries.isFine(field)) {
            entries.trouble(field, "Another control has this name: give this one a name of its own.");
        }
        return name;
    }

    private int positions(String row, String code) {
        String field = row + ".positions";
        int read = entries.needed(
                field,
                entries.whole(field, FEWEST, Control.MOST_POSITIONS),
                FEWEST,
                "Please give how many positions it has.");
        if (entries.isFine(field)) {
            positions.put(code, read);
        }
        return read;
    }

    private @Nullable Control mix(String row, String code, String name) {
        String coarse = mixed(row + ".coarse");
        String fine = mixed(row + ".fine");
        if (coarse == null || fine == null) {
            return null;
        }
        if (coarse.equals(fine)) {
            entries.trouble(row + ".fine", "A switch cannot be mixed with itself: please choose another one.");
            return null;
        }
        int product = positions.getOrDefault(coarse, FEWEST) * positions.getOrDefault(fine, 1);
        if (product > Control.MOST_POSITIONS) {
            entries.trouble(
                    row + ".fine",
                    "Together they would have " + product + " positions, at most " + Control.MOST_POSITIONS
                            + " can be told apart.");
        }
        return entries.areFine() ? new Control(code, name, Kind.MIXED, product, List.of(coarse, fine)) : null;
    }

    private @Nullable String mixed(String field) {
        String code = entries.typed().text(field);
        if (code.isEmpty()) {
            entries.trouble(field, "Please choose a switch.");
        }
        return entries.code(field, switches(rows).keySet());
    }
}
