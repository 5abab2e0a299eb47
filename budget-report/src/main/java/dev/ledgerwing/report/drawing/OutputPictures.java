package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.outputs.OutputStatement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The drawings of the outputs, ready to stand in a page. */
public final class OutputPictures {

    private OutputPictures() {}

    /** The banks of the board aboard with what hangs on each output, and what is wrong with it. */
    public static Picture banks(OutputStatement outputs) {
        BanksView view = new BanksViews(outputs).view();
        return new Picture(BanksChart.svg(view, Layout.WIDE), BanksChart.svg(view, Layout.NARROW));
    }

    /**
     * The same for a board and for outputs that are only looked at.
     *
     * @param board one of the candidates of the record; null = none is chosen
     */
    public static Picture banks(Build build, dev.ledgerwing.core.build.@Nullable Board board, List<Output> outputs) {
        String part = build.outputs().fitted().part();
        return banks(
                OutputStatement.of(build.withFittedBoard(new FittedBoard(board == null ? null : board.code(), part))
                        .withOutputs(outputs)));
    }
}
