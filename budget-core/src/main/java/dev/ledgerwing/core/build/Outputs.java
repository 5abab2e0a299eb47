package dev.ledgerwing.core.build;

import java.util.List;

/**
 * Flight controllers that might be fitted, the one that is, and what its outputs drive.
 *
 * @param assignments what each output drives
 */
public record Outputs(List<Board> boards, FittedBoard fitted, List<Output> assignments) {

    public static final Outputs NONE = new Outputs(List.of(), FittedBoard.NONE, List.of());

    public Outputs {
        boards = List.copyOf(boards);
        assignments = List.copyOf(assignments);
    }
}
