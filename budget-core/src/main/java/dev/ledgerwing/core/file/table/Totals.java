package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.file.table.SortedRow.Kind;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds out which rows each sum stands for. A sum covers the parts back to the sum or heading before it. With no part in
 * between it covers everything back to the last sum of that higher order. A page carry covers everything above it. A sum above
 * all parts covers the whole table; so does one below them, unless it is called a subtotal or by the name of an assembly.
 */
final class Totals {

    private final List<Entry> entries;
    private final TotalCheck check;
    private final int firstPart;
    private final int lastPart;
    private final Set<String> assemblies;
    private final CoveredRows wholeTable;

    private Totals(List<Entry> entries, TotalCheck check) {
        this.entries = entries;
        this.check = check;
        List<Integer> parts = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).isPartRow()) {
                parts.add(i);
            }
        }
        this.firstPart = parts.isEmpty() ? entries.size() : parts.get(0);
        this.lastPart = parts.isEmpty() ? -1 : parts.get(parts.size() - 1);
        this.assemblies = assemblies(entries);
        this.wholeTable = CoveredRows.of(entries);
    }

    static List<TableTotal> check(List<Entry> entries, TotalCheck check) {
        return new Totals(entries, check).all();
    }

    private List<TableTotal> all() {
        List<TableTotal> totals = new ArrayList<>();
        Mass statedSoFar = Mass.ZERO;
        int blockStart = 0;
        int outerStart = 0;
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            TotalLabel label = entry.sorted().label();
            if (label != null) {
                boolean outer = entries.subList(blockStart, i).stream().noneMatch(Entry::isPartRow);
                boolean whole = isOfWholeTable(label, i);
                CoveredRows covered = whole ? wholeTable : covered(start(label, outer ? outerStart : blockStart), i);
                TableTotal total = check.total(entry, label, covered, whole ? statedSoFar : Mass.ZERO);
                totals.add(total);
                statedSoFar = statedSoFar.plus(Objects.requireNonNullElse(total.stated(), Mass.ZERO));
                outerStart = outer ? i + 1 : outerStart;
            }
            blockStart = label != null || entry.sorted().kind() == Kind.HEADING ? i + 1 : blockStart;
        }
        return totals;
    }

    private CoveredRows covered(int from, int to) {
        return CoveredRows.of(entries.subList(from, to));
    }

    private static int start(TotalLabel label, int otherwise) {
        return label.kind() == TotalLabel.Kind.RUNNING ? 0 : otherwise;
    }

    private boolean isOfWholeTable(TotalLabel label, int at) {
        boolean first = at < firstPart && label.kind() != TotalLabel.Kind.RUNNING;
        boolean last = at > lastPart && label.kind() == TotalLabel.Kind.TOTAL && !assemblies.contains(label.rest());
        return first || last;
    }

    private static Set<String> assemblies(List<Entry> entries) {
        return entries.stream()
                .map(Entry::part)
                .filter(Objects::nonNull)
                .map(row -> Words.plain(Objects.requireNonNullElse(row.part().assembly(), "")))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }
}
