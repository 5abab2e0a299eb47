package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** How stations, distances and lists of parts are written in the sentences of balance. */
record BalanceWords(BalanceShape shape, Figures figures) {

    private static final int MOST_NAMED = 3;

    /** {@code 617.2 mm (33.1 % MAC)}; without a wing the millimetres alone. */
    String station(double xMm) {
        Double percent = shape.percentMac(xMm);
        String at = length(xMm);
        return percent == null ? at : at + " (" + percentMac(percent) + ")";
    }

    static String percentMac(double percent) {
        return Figures.percent(percent) + " MAC";
    }

    String length(double mm) {
        return figures.length(Length.ofMm(mm));
    }

    /** A distance that is not nothing, however small. */
    String distance(double mm) {
        Length length = Length.ofMm(mm);
        if (!figures.lengthNumber(length).equals("0")) {
            return figures.length(length);
        }
        return "less than " + (figures.lengthUnit().equals("mm") ? "0.1" : "0.01") + "\u2009" + figures.lengthUnit();
    }

    /** {@code “A”, “B” and 4 more}, in a steady order. */
    static String names(Collection<String> names) {
        List<String> sorted =
                names.stream().sorted().map(name -> "“" + name + "”").toList();
        int more = sorted.size() - MOST_NAMED;
        if (more == 1) {
            return joined(sorted);
        }
        return more <= 0
                ? joined(sorted)
                : sorted.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")) + " and " + more + " more";
    }

    private static String joined(List<String> names) {
        int last = names.size() - 1;
        return last <= 0
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    static String namesOf(Collection<PlacedRow> rows) {
        return names(rows.stream().map(row -> row.row().name()).toList());
    }
}
