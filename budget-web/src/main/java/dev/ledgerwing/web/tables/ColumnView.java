package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.core.file.table.ColumnSample;
import dev.ledgerwing.core.file.table.Meaning;
import dev.ledgerwing.core.file.table.TableColumn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A column as the page shows it.
 *
 * @param sample what stands in it
 * @param meaning the choice in its list: what the member chose, else what the reader found
 * @param unit symbol; empty = none
 * @param why what led the reader to what it did with the column
 */
record ColumnView(int number, String heading, String sample, Meaning meaning, String unit, String why) {

    private static final Pattern SYMBOL = Pattern.compile("[a-z]{1,4}");
    private static final String NO_HEADING = "has no heading";

    static List<ColumnView> of(List<TableColumn> read, List<ColumnSample> samples, ColumnChoices choices) {
        List<ColumnView> views = new ArrayList<>();
        for (int number = 1; number <= Math.max(read.size(), samples.size()); number++) {
            TableColumn column = number <= read.size()
                    ? read.get(number - 1)
                    : new TableColumn(number, "", Meaning.IGNORED, null, NO_HEADING);
            String sample = number <= samples.size() ? sample(samples.get(number - 1)) : "";
            views.add(view(column, sample, choices.of(number)));
        }
        return views;
    }

    private static ColumnView view(TableColumn column, String sample, Optional<ColumnMeaning> choice) {
        Meaning meaning = choice.map(ColumnMeaning::meaning).orElse(column.meaning());
        String unit = column.unit() == null ? choice.map(ColumnMeaning::unit).orElse("") : column.unit();
        return new ColumnView(
                column.number(), Excerpt.of(column.header()), sample, meaning, unit, Excerpt.of(column.why()));
    }

    private static String sample(ColumnSample sample) {
        return Excerpt.of(String.join(" · ", sample.cells()));
    }

    /**
     * What a member changed in the lists.
     *
     * @param meanings as sent, one for each column; {@code units} likewise
     */
    static List<ColumnMeaning> changes(List<ColumnView> shown, List<String> meanings, List<String> units) {
        List<ColumnMeaning> changes = new ArrayList<>();
        for (int i = 0; i < Math.min(shown.size(), Math.min(meanings.size(), units.size())); i++) {
            ColumnView column = shown.get(i);
            String unit = units.get(i);
            meaning(meanings.get(i))
                    .flatMap(meaning -> column.changed(meaning, unit))
                    .ifPresent(changes::add);
        }
        return changes;
    }

    private static Optional<Meaning> meaning(String name) {
        return Arrays.stream(Meaning.values())
                .filter(meaning -> meaning.name().equals(name))
                .findFirst();
    }

    private Optional<ColumnMeaning> changed(Meaning newMeaning, String newUnit) {
        boolean sameUnit = newUnit.equals(unit) || !newMeaning.hasUnit();
        if (newMeaning == meaning && sameUnit) {
            return Optional.empty();
        }
        return Optional.of(new ColumnMeaning(number, newMeaning, fitting(newMeaning, newUnit)));
    }

    /** The unit, unless the new meaning has none or it is only left over from the old one. */
    private @Nullable String fitting(Meaning newMeaning, String newUnit) {
        boolean leftOver = newUnit.equals(unit) && newMeaning.unit(newUnit).isEmpty();
        return !SYMBOL.matcher(newUnit).matches() || !newMeaning.hasUnit() || leftOver ? null : newUnit;
    }
}
