package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * The flight controller that is aboard.
 *
 * @param board code of the candidate that was chosen; null = none yet
 * @param part id of the line that it is in the ledger; null = not said
 */
public record FittedBoard(@Nullable String board, @Nullable String part) {

    public static final FittedBoard NONE = new FittedBoard(null, null);

    public FittedBoard {
        if (board != null) {
            Check.slug("board", board);
        }
        if (part != null) {
            Check.id("part", part);
        }
    }
}
