package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.NetworkStatement;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every single failure: each source out, each element open, each rail shorted, and all solved again.
 *
 * @param rows the gravest first, then in the order of the record
 */
public record FailureTable(NetworkStatement statement, List<FailureRow> rows) {

    public FailureTable {
        rows = List.copyOf(rows);
    }

    public static FailureTable of(NetworkStatement statement) {
        FailureSearch search = FailureSearch.of(statement);
        List<FailureRow> rows = Failure.all(statement.network()).stream()
                .map(search::row)
                .sorted(Comparator.comparingInt(FailureRow::rank)
                        .thenComparing(row -> -row.functions().size()))
                .toList();
        return new FailureTable(statement, rows);
    }

    /** The row of one element. */
    public Optional<FailureRow> ofElement(ElementAt at) {
        return rows.stream().filter(row -> at.equals(row.failure().at())).findFirst();
    }

    /** The row of one source or rail. */
    public Optional<FailureRow> of(Failure.Kind kind, String code) {
        return rows.stream()
                .filter(row ->
                        row.failure().kind() == kind && row.failure().code().equals(code))
                .findFirst();
    }
}
