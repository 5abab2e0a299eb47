package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;

/** The drawings of a supply, ready to stand in a page. */
public final class PowerPictures {

    private PowerPictures() {}

    /** The way of the current as it is recorded, nothing solved: also of a supply that is not finished. */
    public static Picture feeds(Build build) {
        return picture(new PowerViews(build, new FeedFigures(build)).view());
    }

    private static Picture picture(PowerView view) {
        return new Picture(FeedDiagram.svg(view, Layout.WIDE), FeedDiagram.svg(view, Layout.NARROW));
    }
}
