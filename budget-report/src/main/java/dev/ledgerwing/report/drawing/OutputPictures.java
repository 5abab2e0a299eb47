package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.outputs.OutputStatement;

/** The drawings of the outputs, ready to stand in a page. */
public final class OutputPictures {

    private OutputPictures() {}

    /** The banks of the board aboard with what hangs on each output, and what is wrong with it. */
    public static Picture banks(OutputStatement outputs) {
        BanksView view = new BanksViews(outputs).view();
        return new Picture(BanksChart.svg(view, Layout.WIDE), BanksChart.svg(view, Layout.NARROW));
    }
}
