package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.file.table.TablePart.CategoryFrom;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Says, once for the whole table, what was taken for things it does not say. */
final class Assumptions {

    private static final int MOST_HEADINGS = 12;

    private final Columns columns;
    private final TableBody body;
    private final List<TablePart> parts;
    private final List<String> sentences = new ArrayList<>();

    private Assumptions(Columns columns, TableBody body) {
        this.columns = columns;
        this.body = body;
        this.parts = body.parts();
    }

    static List<String> of(Columns columns, TableBody body) {
        Assumptions assumptions = new Assumptions(columns, body);
        if (!assumptions.parts.isEmpty()) {
            assumptions.columnsMissing();
            assumptions.headings();
            assumptions.rowsSilent();
        }
        return List.copyOf(assumptions.sentences);
    }

    private void columnsMissing() {
        if (!columns.has(Meaning.QUANTITY)) {
            sentences.add("No column gives quantities: one piece is taken for each row.");
        }
        if (!columns.has(Meaning.UNIT_MASS) && !columns.has(Meaning.LINE_MASS)) {
            sentences.add("No column gives masses: no mass is known.");
        }
    }

    private void headings() {
        List<String> headings = body.entries().stream()
                .filter(entry -> entry.sorted().kind() == SortedRow.Kind.HEADING)
                .map(entry -> entry.sorted().row().filled().get(0).quoted() + " (row " + entry.row() + ")")
                .toList();
        if (!headings.isEmpty()) {
            int more = headings.size() - MOST_HEADINGS;
            sentences.add("Text alone in its row is taken as the name of the assembly below it: "
                    + headings.stream().limit(MOST_HEADINGS).collect(Collectors.joining(", "))
                    + (more > 0 ? " and " + more + " more." : "."));
        }
    }

    private void rowsSilent() {
        say(part -> part.assembly() == null, "the table gives no assembly.");
        say(part -> !part.basisGiven(), "the table does not say where the mass comes from: it counts as guessed.");
        say(part -> part.categoryFrom() == CategoryFrom.NAME, "the category is proposed from the name.");
        say(part -> part.categoryFrom() == CategoryFrom.NOTHING, "the table gives no category: structure is taken.");
        say(part -> part.state() == null, "the table does not say how far they have come: planned is taken.");
        say(
                part -> part.station().isPartial(),
                "station y or z is not given: the centre line and the height of the datum are taken.");
        say(part -> part.station().isWithoutX(), "station x is not given, so the station is not known.");
    }

    private void say(Predicate<TablePart> which, String what) {
        long count = parts.stream().filter(which).count();
        if (count > 0) {
            sentences.add("For " + those(count) + " " + what);
        }
    }

    private String those(long count) {
        if (parts.size() == 1) {
            return "the only part";
        }
        return count == parts.size() ? "all " + count + " parts" : count + " of " + parts.size() + " parts";
    }
}
