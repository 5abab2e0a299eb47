package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.FieldDifference;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says in one line what was done to a part; always in grams, since everybody reads the same history. */
final class DeedTitle {

    private static final int LONGEST = 200;
    private static final Map<String, String> WORDS = Map.of(
            "quantity", "quantity", "category", "category", "station", "station", "state", "state", "note", "note");

    private DeedTitle() {}

    static String added(PartLine line) {
        return shortened(line.name() + " added, " + mass(line.totalMassOrNull()));
    }

    static String removed(PartLine line) {
        return shortened(line.name() + " removed, " + mass(line.totalMassOrNull()));
    }

    /** @param assembly name of the assembly it belongs to now */
    static String changed(PartLine before, PartLine after, String assembly) {
        if (!before.name().equals(after.name())) {
            return shortened(before.name() + " renamed " + after.name());
        }
        if (!before.assembly().equals(after.assembly())) {
            return shortened(after.name() + " moved to " + assembly);
        }
        if (!before.mass().equals(after.mass()) || before.quantity() != after.quantity()) {
            return shortened(after.name() + ": " + mass(before.totalMassOrNull()) + " "
                    + before.mass().basis().word() + " → " + mass(after.totalMassOrNull()) + " "
                    + after.mass().basis().word());
        }
        List<FieldDifference> differences = FieldDifference.between(before, after);
        String fields = differences.stream()
                .map(difference -> WORDS.getOrDefault(difference.field(), "supply"))
                .distinct()
                .collect(Collectors.joining(", "));
        return shortened(after.name() + ": " + (fields.isEmpty() ? "nothing" : fields) + " changed");
    }

    private static String mass(@Nullable Mass mass) {
        return mass == null ? "mass not known" : Figures.METRIC.mass(mass);
    }

    private static String shortened(String title) {
        return title.length() <= LONGEST ? title : title.substring(0, LONGEST - 1) + "…";
    }
}
