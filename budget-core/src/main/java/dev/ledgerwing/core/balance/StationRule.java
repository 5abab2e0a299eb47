package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Parts that are aboard in some flight case with a mass, and nobody has said where. One finding for all of them: a parts table that
 * has just been read in may have no stations at all.
 */
record StationRule(BalanceStatement statement) {

    Optional<Finding> finding() {
        Map<Object, PlacedRow> nowhere = new LinkedHashMap<>();
        for (CaseBalance aboard : statement.flight()) {
            for (PlacedRow row : aboard.withoutStation()) {
                nowhere.putIfAbsent(
                        row.row().line() == null ? row.row() : row.row().line(), row);
            }
        }
        return nowhere.isEmpty() ? Optional.empty() : Optional.of(finding(List.copyOf(nowhere.values())));
    }

    private static Finding finding(List<PlacedRow> rows) {
        String sentence = rows.size() == 1
                ? BalanceWords.namesOf(rows) + " has a mass, but nobody has said where it sits: it is in no balance."
                : rows.size() + " parts have a mass, but nobody has said where they sit: they are in no balance: "
                        + BalanceWords.namesOf(rows) + ".";
        return BalanceAgainst.nothing("balance.no-station", "Stations").finding(Verdict.UNKNOWN, sentence);
    }
}
