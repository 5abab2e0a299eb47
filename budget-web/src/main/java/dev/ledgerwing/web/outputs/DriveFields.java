package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows of what hangs on the plug of one output. */
final class DriveFields {

    static final String LIST = "drive";

    private static final List<String> OF_A_ROW = List.of("part", "pieces");

    private DriveFields() {}

    static void show(List<Driven> drives, Shown fields) {
        for (int i = 0; i < drives.size(); i++) {
            fields.text(LIST + "." + i + ".part", drives.get(i).line())
                    .text(
                            LIST + "." + i + ".pieces",
                            Integer.toString(drives.get(i).pieces()));
        }
    }

    /** What is driven, as typed; fewer where something is wrong. */
    static List<Driven> drives(Entries entries, Build build) {
        List<Driven> drives = new ArrayList<>();
        for (int i = 0; i < entries.typed().rows(LIST); i++) {
            String row = LIST + "." + i;
            if (!entries.typed().isBlank(row, OF_A_ROW)) {
                driven(row, entries, build).ifPresent(driven -> {
                    if (drives.stream().anyMatch(other -> other.line().equals(driven.line()))) {
                        entries.trouble(row + ".part", "This part stands in two rows: please say its pieces in one.");
                    }
                    drives.add(driven);
                });
            }
        }
        return drives;
    }

    private static Optional<Driven> driven(String row, Entries entries, Build build) {
        String part =
                entries.code(row + ".part", OutputChoices.names(build.lines()).keySet());
        String line = entries.needed(row + ".part", part, "", "Please choose the part.");
        Integer typed = entries.whole(row + ".pieces", 1, OutputBounds.MOST_PIECES);
        int pieces = typed == null ? 1 : typed;
        int there = build.line(line).map(PartLine::quantity).orElse(pieces);
        if (pieces > there) {
            entries.trouble(row + ".pieces", "The ledger has only " + there + " of it.");
        }
        return line.isEmpty() ? Optional.empty() : Optional.of(new Driven(line, pieces));
    }
}
