package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The parts that a sum stands for.
 *
 * @param sum of the known masses as they are imported, to the milligram each
 * @param exact the same as written, with what the rounding of the written digits may have taken away
 * @param ofOneEach sum of the masses of one piece, quantities left aside: a slip people make
 */
record CoveredRows(
        List<Integer> rows, Mass sum, WrittenMass exact, Mass ofOneEach, List<Integer> unknown, List<Integer> leftOut) {

    private static final int MOST_NAMED = 5;

    static CoveredRows of(List<Entry> entries) {
        List<Entry> partRows = entries.stream().filter(Entry::isPartRow).toList();
        List<PartRow> parts =
                partRows.stream().map(Entry::part).filter(Objects::nonNull).toList();
        return new CoveredRows(
                numbers(parts),
                parts.stream().map(row -> row.part().lineMass()).reduce(Mass.ZERO, Mass::plus),
                exactly(parts),
                parts.stream()
                        .map(row -> Objects.requireNonNullElse(row.part().unitMass(), Mass.ZERO))
                        .reduce(Mass.ZERO, Mass::plus),
                numbers(parts.stream().filter(row -> row.written() == null).toList()),
                partRows.stream()
                        .filter(entry -> entry.part() == null)
                        .map(Entry::row)
                        .toList());
    }

    boolean isComplete() {
        return unknown.isEmpty() && leftOut.isEmpty();
    }

    boolean agreesWith(WrittenMass stated) {
        return new WrittenMass(exact.grams(), BigDecimal.ZERO).agreesWith(stated);
    }

    /** Which parts were added up, and to what. */
    String addedUp() {
        if (rows.isEmpty()) {
            return "no parts belong to it";
        }
        int first = rows.get(0);
        int last = rows.get(rows.size() - 1);
        String figure = Figures.METRIC.mass(sum);
        return first == last
                ? "the part of row " + first + " has " + figure
                : "the parts of rows " + first + " to " + last + " add up to " + figure;
    }

    /** What is missing from the sum, as sentences with a space before them; empty = nothing. */
    String gaps() {
        String notKnown = unknown.isEmpty()
                ? ""
                : " The mass of " + named(unknown) + " is not known, so the parts weigh more than their sum.";
        String problems = leftOut.isEmpty() ? "" : " Left out, as there is a problem: " + named(leftOut) + ".";
        return notKnown + problems;
    }

    /** A slip that would make exactly this difference; empty = none is seen. */
    String likelyCause(WrittenMass stated, Mass sumsStatedBefore) {
        if (same(stated, ofOneEach)) {
            return " It is the sum of the masses of one piece each, without the quantities.";
        }
        if (sumsStatedBefore.mg() > 0 && same(stated, sum.plus(sumsStatedBefore))) {
            return " It counts the sums above it a second time.";
        }
        return exact.agreesWith(stated) ? " Rounded digits in the rows can be the reason." : "";
    }

    private static boolean same(WrittenMass stated, Mass mass) {
        return new WrittenMass(BigDecimal.valueOf(mass.mg(), 3), BigDecimal.ZERO).agreesWith(stated);
    }

    private static WrittenMass exactly(List<PartRow> parts) {
        return parts.stream()
                .map(PartRow::written)
                .filter(Objects::nonNull)
                .reduce(new WrittenMass(BigDecimal.ZERO, BigDecimal.ZERO), WrittenMass::plus);
    }

    private static List<Integer> numbers(List<PartRow> parts) {
        return parts.stream().map(row -> row.part().row()).toList();
    }

    private static String named(List<Integer> rows) {
        String first = rows.stream().limit(MOST_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        int more = rows.size() - MOST_NAMED;
        return (rows.size() == 1 ? "row " : "rows ") + first + (more > 0 ? " and " + more + " more" : "");
    }
}
