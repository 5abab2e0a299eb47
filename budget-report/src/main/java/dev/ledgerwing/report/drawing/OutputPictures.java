package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The drawings of the outputs, ready to stand in a page. */
public final class OutputPictures {

    private OutputPictures() {}

    /**
     * The banks of a board with what hangs on each output.
     *
     * @param board one of the candidates; null = none is chosen
     * @param outputs those recorded, or others that are looked at
     */
    public static Picture banks(Build build, dev.ledgerwing.core.build.@Nullable Board board, List<Output> outputs) {
        return picture(new BanksViews(build, board, outputs).view());
    }

    private static Picture picture(BanksView view) {
        return new Picture(BanksChart.svg(view, Layout.WIDE), BanksChart.svg(view, Layout.NARROW));
    }
}
