package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.PowerView.FeedMark;
import java.util.List;
import java.util.Map;

/**
 * Where everything of a feed diagram stands.
 *
 * @param nodes sources and rails by their code
 */
record FeedPlan(Map<String, Node> nodes, List<Lane> lanes, double bottom) {

    /**
     * A source or a rail: an upright bar, and text right of it.
     *
     * @param column its layer
     */
    record Node(String code, int column, double busX, NodeText text, Spot corner, double top, double bottom) {

        boolean overlaps(Node other) {
            return column == other.column && top < other.bottom + 6 && other.top < bottom + 6;
        }

        /** Whether a line that goes across at this height crosses its bar. */
        boolean isCrossedAt(double y) {
            return y > top - 1 && y < bottom + 1;
        }
    }

    /**
     * A feed: rows of elements between two bars.
     *
     * @param left where its elements begin, and {@code right} where they end
     */
    record Lane(FeedMark feed, boolean backward, double left, double right, double nameBase, List<Row> rows) {

        Lane {
            rows = List.copyOf(rows);
        }

        double firstY() {
            return rows.get(0).y();
        }

        double lastY() {
            return rows.get(rows.size() - 1).y();
        }
    }

    /** A line with some elements on it. */
    record Row(double y, double bottom, List<ElementCell> cells) {

        Row {
            cells = List.copyOf(cells);
        }
    }

    FeedPlan {
        nodes = Map.copyOf(nodes);
        lanes = List.copyOf(lanes);
    }
}
