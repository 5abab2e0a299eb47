package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Says in one line what was done to a part; always in grams, since everybody reads the same history. */
final class DeedTitle {

    private DeedTitle() {}

    static String added(PartLine line) {
        return line.name() + " added, " + mass(line.totalMassOrNull());
    }

    static String removed(PartLine line) {
        return line.name() + " removed, " + mass(line.totalMassOrNull());
    }

    /** Names everything that a reader of the history would ask for, the mass above all. */
    static String changed(PartLine before, PartLine after, String assembly) {
        List<String> done = new ArrayList<>();
        if (!before.name().equals(after.name())) {
            done.add("renamed " + after.name());
        }
        if (!before.assembly().equals(after.assembly())) {
            done.add("moved to " + assembly);
        }
        if (!before.mass().equals(after.mass()) || before.quantity() != after.quantity()) {
            done.add(mass(before.totalMassOrNull()) + " "
                    + before.mass().basis().word() + " → " + mass(after.totalMassOrNull()) + " "
                    + after.mass().basis().word());
        }
        return before.name() + (done.isEmpty() ? " edited" : ": " + String.join("; ", done));
    }

    private static String mass(@Nullable Mass mass) {
        return mass == null ? "mass not known" : Figures.METRIC.mass(mass);
    }
}
