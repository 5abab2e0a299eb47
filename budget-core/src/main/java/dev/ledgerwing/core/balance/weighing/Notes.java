package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What has to be known to read the comparison. */
record Notes(WeighInReport report, ScalesAnswer answer, Figures figures) {

    private static final int MOST_NAMED = 5;

    List<String> all() {
        List<String> notes = new ArrayList<>();
        LedgerSide ledger = report.ledger();
        add(notes, ledger.withoutMass(), "Without a mass in the ledger, so the difference holds all of it: ");
        add(notes, ledger.withoutStation(), "Without a station in the ledger, so only the mass is compared: ");
        add(notes, ledger.notFitted(), "Not fitted yet, so not compared: ");
        if (answer.heightFromLedger()) {
            notes.add("It did not stand level, so x rests on the height that the ledger gives.");
        }
        Double perDegree = answer.shiftPerDegreeMm();
        if (perDegree != null) {
            notes.add("Each degree off level that nobody noticed moves x by "
                    + figures.length(Length.ofMm(Math.abs(perDegree))) + ".");
        }
        return notes;
    }

    private static void add(List<String> notes, List<PartLine> lines, String words) {
        if (!lines.isEmpty()) {
            String more = lines.size() > MOST_NAMED ? " and " + (lines.size() - MOST_NAMED) + " more" : "";
            notes.add(words
                    + lines.stream()
                            .limit(MOST_NAMED)
                            .map(line -> "“" + line.name() + "”")
                            .collect(Collectors.joining(", "))
                    + more + ".");
        }
    }
}
