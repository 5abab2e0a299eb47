package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.TableReading;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A table as it was understood, ready to be shown.
 *
 * @param how its character set, what parts its cells and its decimal mark, in words; empty where it could not be read
 * @param trouble why it cannot be read as it is; empty = it can
 * @param loose how many parts give no assembly
 * @param effects what importing it would do, one for each way; none while it cannot be imported
 * @param newAssemblies names of the assemblies it would make; empty = none
 */
record PreviewView(
        String name,
        String how,
        String trouble,
        List<ColumnView> columns,
        CellNotes problems,
        CellNotes notices,
        TotalsView totals,
        List<String> assumed,
        Mass mass,
        int count,
        List<PartView> parts,
        long loose,
        List<Effect> effects,
        String newAssemblies) {

    private static final int MOST_PARTS = 50;
    private static final int MOST_NAMED = 12;

    /** What the parts weigh together, and how many of them are not known. */
    record Mass(String known, long unknown) {}

    static PreviewView of(String name, ReadTable table, List<Effect> effects, Figures figures) {
        TableReading reading = table.reading();
        return new PreviewView(
                name,
                reading.refusal().isPresent() ? "" : how(reading),
                reading.refusal().orElse(""),
                table.columns(),
                CellNotes.of(reading.problems(), table.columns()),
                CellNotes.of(reading.notices(), table.columns()),
                TotalsView.of(reading.totals(), figures),
                reading.assumed(),
                new Mass(figures.mass(reading.knownMass()), reading.partsOfUnknownMass()),
                reading.parts().size(),
                reading.parts().stream()
                        .limit(MOST_PARTS)
                        .map(part -> PartView.of(part, figures))
                        .toList(),
                reading.parts().stream().filter(part -> part.assembly() == null).count(),
                effects,
                effects.stream()
                        .findFirst()
                        .map(Effect::newAssemblies)
                        .map(PreviewView::named)
                        .orElse(""));
    }

    private static String named(List<String> names) {
        String first = names.stream().limit(MOST_NAMED).map(Excerpt::of).collect(Collectors.joining(", "));
        int more = names.size() - MOST_NAMED;
        return more > 0 ? first + " and " + more + " more" : first;
    }

    private static String how(TableReading reading) {
        String delimiter = switch (reading.delimiter()) {
            case ';' -> "semicolons";
            case '\t' -> "tabs";
            default -> "commas";
        };
        String headings = reading.headerRow() == 0 ? "no headings" : "headings in row " + reading.headerRow();
        return encoding(reading.encoding()) + ", cells parted by " + delimiter + ", decimal "
                + (reading.decimalMark() == ',' ? "comma" : "point") + ", " + headings;
    }

    private static String encoding(String charset) {
        String upper = charset.toUpperCase(Locale.ROOT);
        return upper.startsWith("WINDOWS-") ? "Windows-" + upper.substring("WINDOWS-".length()) : upper;
    }

    public boolean isImportable() {
        return !effects.isEmpty();
    }
}
