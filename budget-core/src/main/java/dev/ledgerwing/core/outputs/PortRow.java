package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * One kind of connection: need against supply.
 *
 * @param supply how many the board has, of buses how many buses; null = not known
 */
public record PortRow(PortKind kind, int need, @Nullable Integer supply) {

    static PortRow of(PortKind kind, PortTally need, Board board) {
        return new PortRow(kind, need.need(kind), kind.of(board));
    }

    /** How many are missing; 0 when there are enough, or when the supply is not known. A bus takes any number of parts. */
    public int shortage() {
        if (supply == null) {
            return 0;
        }
        return kind.isBus() ? (need > 0 && supply == 0 ? need : 0) : Math.max(0, need - supply);
    }

    /** Nothing left is tight: the next part finds none. */
    public Verdict verdict() {
        if (need == 0) {
            return Verdict.HOLDS;
        }
        if (supply == null) {
            return Verdict.UNKNOWN;
        }
        if (shortage() > 0) {
            return Verdict.BREAKS;
        }
        return !kind.isBus() && need == supply ? Verdict.TIGHT : Verdict.HOLDS;
    }
}
