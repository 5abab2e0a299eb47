package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.FeedPlan.Lane;
import dev.ledgerwing.report.drawing.FeedPlan.Node;
import dev.ledgerwing.report.drawing.FeedPlan.Row;
import dev.ledgerwing.report.drawing.PowerView.ElementMark;
import dev.ledgerwing.report.drawing.PowerView.FeedMark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Puts sources, rails and feeds one below the other wherever they would share room. */
final class FeedPlanner {

    private static final double APART = 8;
    private static final double BETWEEN_ROWS = 9;

    private final PowerView view;
    private final Plate plate;
    private final FeedColumns columns;
    private final FeedLayers layers;
    private final double top;
    private final List<Box> taken = new ArrayList<>();
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final List<Lane> lanes = new ArrayList<>();

    private FeedPlanner(PowerView view, Plate plate, FeedColumns columns, double top) {
        this.view = view;
        this.plate = plate;
        this.columns = columns;
        this.layers = columns.layers();
        this.top = top;
    }

    static FeedPlan plan(PowerView view, Plate plate, FeedColumns columns, double top) {
        FeedPlanner planner = new FeedPlanner(view, plate, columns, top);
        view.sources().forEach(source -> planner.node(source.code(), top));
        view.rails().forEach(rail -> planner.node(rail.code(), top));
        double bottom = planner.taken.stream().mapToDouble(Box::bottom).max().orElse(top);
        return new FeedPlan(planner.nodes, planner.lanes, bottom);
    }

    /** Places it, its feeds, and what these lead to; nothing where it is placed already. */
    private void node(String code, double atLeast) {
        if (nodes.containsKey(code)) {
            return;
        }
        int column = layers.of(code);
        double left = columns.left(column);
        double width = columns.right(column) - left;
        NodeText text = text(code, width);
        double upper = room(left - 1, left + width, text.height(), atLeast);
        Spot corner = new Spot(left, upper);
        nodes.put(code, new Node(code, column, columns.busX(code), text, corner, upper, upper + text.height()));
        feedsInOrder(code).forEach(this::lane);
    }

    private NodeText text(String code, double width) {
        var source = view.sourcesByCode().get(code);
        return source != null
                ? NodeText.of(source, plate, width)
                : NodeText.of(Objects.requireNonNull(view.railsByCode().get(code)), plate, width);
    }

    /** First what leads to a rail of its own, last what leads to one that others feed too: so that fewer lines cross. */
    private List<FeedMark> feedsInOrder(String code) {
        return view.from(code).stream()
                .sorted(Comparator.comparingInt(feed -> view.to(feed.to()).size()))
                .toList();
    }

    private void lane(FeedMark feed) {
        int column = layers.of(feed.from());
        boolean backward = layers.isBackward(feed);
        double left = columns.left(column);
        double right = columns.right(column);
        List<List<ElementCell>> rows = rows(feed, right - left);
        double height = head() + rows.stream().mapToDouble(FeedPlanner::height).sum();
        height += BETWEEN_ROWS * (rows.size() - 1) + (backward ? 2 * head() : 0);
        double end = backward ? right : columns.busX(feed.to());
        double upper = room(columns.busX(feed.from()), end, height, top);
        Lane lane = new Lane(feed, backward, left, right, upper + head() - 3, placed(rows, upper + head()));
        lanes.add(lane);
        reach(feed.from(), lane.firstY());
        if (!backward) {
            node(feed.to(), lane.lastY() - 12);
            reach(feed.to(), lane.lastY());
        }
    }

    /** Room for the name of a feed. */
    private double head() {
        return 1.3 * plate.smallLetters().size();
    }

    private List<List<ElementCell>> rows(FeedMark feed, double width) {
        int across = Math.max(1, (int) (width / ElementCell.LEAST_WIDTH + 0.001));
        List<List<ElementCell>> rows = new ArrayList<>();
        for (int first = 0; first == 0 || first < feed.elements().size(); first += across) {
            List<ElementMark> some = feed.elements()
                    .subList(first, Math.min(first + across, feed.elements().size()));
            rows.add(some.stream()
                    .map(element -> new ElementCell(plate, element, width / across))
                    .toList());
        }
        return rows;
    }

    private static double height(List<ElementCell> row) {
        return row.stream().mapToDouble(ElementCell::height).max().orElse(2 * ElementCell.above());
    }

    private static List<Row> placed(List<List<ElementCell>> rows, double top) {
        List<Row> placed = new ArrayList<>();
        double at = top;
        for (List<ElementCell> row : rows) {
            double bottom = at + height(row);
            placed.add(new Row(at + ElementCell.above(), bottom, row));
            at = bottom + BETWEEN_ROWS;
        }
        return placed;
    }

    /** The bar of this one goes as far as {@code y}. */
    private void reach(String code, double y) {
        nodes.computeIfPresent(
                code,
                (same, node) -> new Node(
                        same,
                        node.column(),
                        node.busX(),
                        node.text(),
                        node.corner(),
                        Math.min(node.top(), y - 2),
                        Math.max(node.bottom(), y + 2)));
    }

    /** The highest place where nothing else stands, at least at {@code atLeast}; takes it. */
    private double room(double left, double right, double height, double atLeast) {
        double free = atLeast;
        for (Box box : taken) {
            if (box.left() < right && left < box.right()) {
                free = Math.max(free, box.bottom() + APART);
            }
        }
        taken.add(new Box(left, free, right, free + height));
        return free;
    }

    /** On which track each bar has to stand so that no two of a layer cover each other. */
    static Map<String, Integer> tracks(FeedPlan plan) {
        Map<String, Integer> tracks = new HashMap<>();
        List<Node> placed = new ArrayList<>();
        List<Node> inOrder = plan.nodes().values().stream()
                .sorted(Comparator.comparingInt(Node::column)
                        .thenComparingDouble(Node::top)
                        .thenComparing(Node::code))
                .toList();
        for (Node node : inOrder) {
            int track = 0;
            while (isTaken(track, node, placed, tracks)) {
                track++;
            }
            tracks.put(node.code(), track);
            placed.add(node);
        }
        return tracks;
    }

    private static boolean isTaken(int track, Node node, List<Node> placed, Map<String, Integer> tracks) {
        return placed.stream()
                .anyMatch(other -> Objects.equals(tracks.get(other.code()), track) && other.overlaps(node));
    }
}
