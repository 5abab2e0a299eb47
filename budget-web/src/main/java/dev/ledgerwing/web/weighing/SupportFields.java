package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A row for each support: where it stands and what its scale shows. */
final class SupportFields {

    private static final String LIST = "support";
    private static final List<String> FIELDS = List.of("name", "x", "y", "z", "reading", "tare", "tilted");
    private static final int USUAL = 3;
    private static final int MOST = 20;

    private SupportFields() {}

    /** The places of the weighing before, to be used once more; never its readings. */
    static void show(List<Support> before, Shown fields) {
        for (int i = 0; i < (before.isEmpty() ? USUAL : before.size()); i++) {
            String row = LIST + "." + i;
            Support known = before.isEmpty() ? null : before.get(i);
            fields.text(row + ".name", known == null ? "" : known.name())
                    .station(row, known == null ? null : known.station())
                    .mass(row + ".reading", null)
                    .mass(row + ".tare", known == null ? null : known.tare())
                    .mass(row + ".tilted", null);
        }
    }

    /** @param isTilted whether there was a second weighing, which every support has to have a reading of */
    static List<Support> supports(Entries entries, boolean isTilted) {
        List<Support> supports = new ArrayList<>();
        int rows = 0;
        for (int i = 0; i < entries.typed().rows(LIST); i++) {
            String row = LIST + "." + i;
            if (!entries.typed().isBlank(row, FIELDS)) {
                rows++;
                support(row, "Support " + (i + 1), isTilted, entries).ifPresent(supports::add);
            }
        }
        if (rows == 0) {
            entries.trouble(LIST + ".0.reading", "Please give what the scales show, at one support at least.");
        } else if (rows > MOST) {
            entries.trouble("", "A weighing has at most " + MOST + " supports.");
        }
        return supports;
    }

    private static Optional<Support> support(String row, String unnamed, boolean isTilted, Entries entries) {
        String typedName = entries.line(row + ".name", 200);
        Station at = entries.needed(
                row + ".x", entries.station(row), Station.atX(Length.ZERO), "Please give where this support stands.");
        Mass reading = entries.needed(
                row + ".reading", entries.mass(row + ".reading"), Mass.ZERO, "Please give what the scale shows here.");
        Mass typedTare = entries.mass(row + ".tare");
        Mass tare = typedTare == null ? Mass.ZERO : typedTare;
        Mass tilted = entries.mass(row + ".tilted");
        checkAgainstTare(row + ".reading", reading, tare, entries);
        if (isTilted || tilted != null) {
            checkTilted(row + ".tilted", tilted, tare, entries);
        }
        if (tilted != null && !isTilted) {
            entries.trouble("tilt", "There are readings of a second weighing: please give how far it was tilted.");
        }
        String name = typedName.isEmpty() ? unnamed : typedName;
        return entries.areFine() ? Optional.of(new Support(name, at, reading, tare, tilted)) : Optional.empty();
    }

    private static void checkTilted(String field, @Nullable Mass tilted, Mass tare, Entries entries) {
        if (tilted != null) {
            checkAgainstTare(field, tilted, tare, entries);
        } else if (entries.isFine(field)) {
            entries.trouble(field, "Please give what the scale shows here with the airframe tilted.");
        }
    }

    private static void checkAgainstTare(String field, Mass reading, Mass tare, Entries entries) {
        if (reading.compareTo(tare) < 0 && entries.isFine(field)) {
            entries.trouble(
                    field,
                    "This is below the tare of " + entries.figures().mass(tare)
                            + ": a reading has the tare in it; without one leave the tare empty.");
        }
    }
}
