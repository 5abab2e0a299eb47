package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.power.failure.Clearing;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.failure.FailureTable;
import dev.ledgerwing.core.power.failure.Overload;
import dev.ledgerwing.core.power.failure.RailChange;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One row of the single-failure table.
 *
 * @param what what fails
 * @param note what opens, what is dragged down, what must carry too much; empty = nothing of that
 * @param rails what becomes of rails
 * @param flight functions lost that the flight hangs on, {@code others} other functions and parts
 */
public record FailureEntry(String what, String note, String rails, String flight, String others, VerdictMark verdict) {

    /**
     * Of all that takes anything down, or leaves something unjudged.
     *
     * @param isFlightKnown whether it is known which failures take what the flight hangs on
     */
    static List<FailureEntry> of(FailureTable table, boolean isFlightKnown) {
        int railCount = table.statement().rails().size();
        return table.rows().stream()
                .filter(row -> !isHarmless(row))
                .map(row -> of(row, railCount, isFlightKnown))
                .toList();
    }

    /** What may fail without anything lost, in words. */
    static List<String> harmless(FailureTable table) {
        return table.rows().stream()
                .filter(FailureEntry::isHarmless)
                .map(row -> row.failure().name())
                .distinct()
                .toList();
    }

    private static boolean isHarmless(FailureRow row) {
        return row.rails().isEmpty()
                && row.loads().isEmpty()
                && row.unjudged().isEmpty()
                && row.dragged().isEmpty()
                && row.overloads().stream().noneMatch(Overload::isNew);
    }

    private static FailureEntry of(FailureRow row, int railCount, boolean isFlightKnown) {
        return new FailureEntry(
                row.failure().words(),
                note(row),
                rails(row, railCount),
                functions(row)
                        .filter(FailureEntry::isFlight)
                        .map(RadioFunction::name)
                        .collect(Collectors.joining(", ")),
                others(row),
                verdict(row.verdict(), isFlightKnown));
    }

    /** Something is lost: that the flight goes on is only said where it is known what the flight hangs on. */
    private static VerdictMark verdict(Verdict verdict, boolean isFlightKnown) {
        if (verdict != Verdict.HOLDS) {
            return VerdictMark.of(verdict);
        }
        return isFlightKnown ? VerdictMark.saying(verdict, "flight holds") : VerdictMark.of(Verdict.UNKNOWN);
    }

    private static String rails(FailureRow row, int railCount) {
        boolean all = row.rails().size() == railCount && railCount > 1;
        return all && row.rails().stream().allMatch(RailChange::isDark)
                ? "every rail dark"
                : row.rails().stream().map(FailureEntry::rail).collect(Collectors.joining("; "));
    }

    private static String rail(RailChange change) {
        String name = change.rail().name();
        return change.isDark() ? name + " dark" : name + " only " + PowerWords.volts(change.afterV());
    }

    private static Stream<RadioFunction> functions(FailureRow row) {
        return row.functions().stream();
    }

    private static boolean isFlight(RadioFunction function) {
        return function.criticality() == Criticality.FLIGHT;
    }

    /** Other functions; where none is lost at all, the parts that go dark. */
    private static String others(FailureRow row) {
        if (row.functions().isEmpty()) {
            return row.loads().isEmpty()
                    ? ""
                    : PowerWords.names(row.loads().stream()
                            .map(load -> load.load().line().name())
                            .toList());
        }
        return functions(row)
                .filter(function -> !isFlight(function))
                .map(RadioFunction::name)
                .collect(Collectors.joining(", "));
    }

    private static String note(FailureRow row) {
        List<String> opens = row.clearings().stream()
                .map(Clearing::element)
                .map(element -> element.name())
                .toList();
        List<String> dragged = row.dragged().stream().map(PowerSource::name).toList();
        List<String> overloads = row.overloads().stream()
                .filter(Overload::isNew)
                .map(Overload::name)
                .toList();
        List<String> unjudged =
                row.unjudged().stream().map(load -> load.line().name()).toList();
        return Stream.of(
                        said(opens, " opens"),
                        said(dragged, " is dragged down: nothing stops it"),
                        said(overloads, " carries too much then"),
                        said(unjudged, ": whether it still works is not known"))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String said(List<String> names, String what) {
        return names.isEmpty() ? "" : PowerWords.names(names) + what;
    }
}
