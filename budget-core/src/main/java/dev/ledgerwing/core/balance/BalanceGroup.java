package dev.ledgerwing.core.balance;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one assembly, the extra items, or what is booked on the whole airframe, with their masses and moments. The groups of a
 * case add up to its total exactly.
 *
 * @param code code of the assembly; null for extra items and for the booking
 * @param booked what is booked on it; part of {@code predicted}
 */
public record BalanceGroup(
        @Nullable String code,
        String title,
        List<PlacedRow> rows,
        BalanceSum basic,
        BalanceSum booked,
        BalanceSum predicted) {

    public BalanceGroup {
        rows = List.copyOf(rows);
    }

    static BalanceGroup of(@Nullable String code, String title, List<PlacedRow> rows, List<BookedMass> bookings) {
        BalanceSum booked = sum(bookings);
        return new BalanceGroup(
                code,
                title,
                rows,
                sum(rows, MassState.BASIC),
                booked,
                sum(rows, MassState.PREDICTED).plus(booked));
    }

    public BalanceSum sum(MassState state) {
        return state == MassState.BASIC ? basic : predicted;
    }

    static BalanceSum sum(Collection<PlacedRow> rows, MassState state) {
        BalanceSum sum = BalanceSum.ZERO;
        for (PlacedRow row : rows) {
            sum = sum.plus(row.sum(state));
        }
        return sum;
    }

    static BalanceSum sum(Collection<BookedMass> booked) {
        return booked.stream().map(BookedMass::sum).reduce(BalanceSum.ZERO, BalanceSum::plus);
    }
}
