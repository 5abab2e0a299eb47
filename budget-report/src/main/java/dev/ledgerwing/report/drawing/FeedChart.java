package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.FeedPlan.Lane;
import dev.ledgerwing.report.drawing.FeedPlan.Node;
import dev.ledgerwing.report.drawing.FeedPlan.Row;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Sources on the left, rails further right the more ways the current has behind it, feeds as lines through their elements. A line that
 * has nothing to do with a bar goes over it in a bow.
 */
final class FeedChart {

    private static final double HOP = 4;
    private static final double DOT = 2.6;
    private static final double ARROW = 6;
    private static final int MOST_TRIES = 6;

    private final PowerView view;
    private final Plate plate;
    private final FeedPlan plan;

    private FeedChart(PowerView view, Plate plate, FeedPlan plan) {
        this.view = view;
        this.plate = plate;
        this.plan = plan;
    }

    /** Draws and gives the place below; null = there are too many layers to stand side by side. */
    static @Nullable Double draw(PowerView view, Plate plate, double top) {
        FeedPlan plan = plan(view, plate, top);
        return plan == null ? null : new FeedChart(view, plate, plan).draw();
    }

    private static @Nullable FeedPlan plan(PowerView view, Plate plate, double top) {
        FeedLayers layers = new FeedLayers(view);
        Map<String, Integer> tracks = new HashMap<>();
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            FeedColumns columns = new FeedColumns(plate.width(), tracks, layers);
            if (!columns.isRoomy()) {
                return null;
            }
            FeedPlan plan = FeedPlanner.plan(view, plate, columns, top);
            if (tries > 0 && isClear(plan, tracks)) {
                return plan;
            }
            Map<String, Integer> wanted = new HashMap<>(tracks);
            FeedPlanner.tracks(plan).forEach((code, track) -> wanted.merge(code, track, Math::max));
            tracks = wanted;
        }
        return null;
    }

    /** Whether no two bars cover each other. */
    private static boolean isClear(FeedPlan plan, Map<String, Integer> tracks) {
        return plan.nodes().values().stream()
                .allMatch(node -> plan.nodes().values().stream()
                        .noneMatch(other -> !other.equals(node)
                                && Objects.equals(tracks.get(other.code()), tracks.get(node.code()))
                                && other.overlaps(node)));
    }

    private double draw() {
        plan.lanes().forEach(this::lane);
        plan.nodes().values().stream()
                .sorted(Comparator.comparing(Node::busX).thenComparing(Node::top))
                .forEach(this::node);
        return plan.bottom();
    }

    private void node(Node node) {
        boolean lit = node.text().state() == State.LIT;
        Spot top = new Spot(node.busX(), node.top());
        plate.line(top, new Spot(node.busX(), node.bottom()), lit ? Pen.BUS : Pen.BUS_DARK);
        if (!lit) {
            plate.hatch(new Box(node.busX() + 3, node.top(), node.busX() + 8, node.bottom()), 3.5);
        }
        double y = node.corner().y() + node.text().firstLine();
        if (node.corner().x() - node.busX() > FeedColumns.TURN + FeedColumns.TRACK) {
            across(node.busX(), node.corner().x() - 3, y, node.code(), Pen.LEADER);
        }
        node.text().draw(node.corner());
    }

    private void lane(Lane lane) {
        Pen pen = lane.feed().state() == State.LIT ? Pen.FEED : Pen.FEED_DARK;
        plate.open(pen == Pen.FEED ? "feed" : "feed dark", lane.feed().name());
        double room = lane.right() - lane.left();
        String name = lane.feed().name() + (pen == Pen.FEED ? "" : ", dark");
        plate.small(
                new Spot(lane.left(), lane.nameBase()),
                Anchor.START,
                plate.smallLetters().cut(name, room));
        lines(lane, pen);
        plate.close();
        lane.rows().forEach(row -> cells(lane, row));
    }

    private void lines(Lane lane, Pen pen) {
        Node from = node(lane.feed().from());
        plate.circle(new Spot(from.busX(), lane.firstY()), DOT, Pen.ARROW);
        double start = from.busX();
        List<Row> rows = lane.rows();
        for (int index = 0; index < rows.size() - 1; index++) {
            Row row = rows.get(index);
            double between = row.bottom() + 4;
            double right = lane.right() + 5;
            double left = lane.left() - 5;
            double next = rows.get(index + 1).y();
            across(start, right, row.y(), lane.feed().from(), pen);
            plate.line(new Spot(right, row.y()), new Spot(right, between), pen);
            plate.line(new Spot(right, between), new Spot(left, between), pen);
            plate.line(new Spot(left, between), new Spot(left, next), pen);
            start = left;
        }
        end(lane, start, pen);
    }

    private void end(Lane lane, double start, Pen pen) {
        double y = lane.lastY();
        if (lane.backward()) {
            across(start, lane.right(), y, lane.feed().from(), pen);
            arrow(new Spot(lane.right(), y));
            String words = "loop: back to " + view.nameOf(lane.feed().to());
            Row last = lane.rows().get(lane.rows().size() - 1);
            double base = last.bottom() - 2;
            for (String line : plate.smallLetters().wrapped(words, lane.right() - lane.left(), 2)) {
                base += 1.2 * plate.smallLetters().size();
                plate.small(new Spot(lane.left(), base), Anchor.START, line);
            }
            return;
        }
        double bus = node(lane.feed().to()).busX();
        across(start, bus - 2, y, lane.feed().from(), pen);
        arrow(new Spot(bus - 2, y));
    }

    private void arrow(Spot tip) {
        plate.fill(List.of(tip, tip.plus(-ARROW, -3.5), tip.plus(-ARROW, 3.5)), Pen.ARROW);
    }

    /** A level line that goes over every bar but its own. */
    private void across(double from, double to, double y, String own, Pen pen) {
        List<Double> bars = plan.nodes().values().stream()
                .filter(node -> !node.code().equals(own) && node.isCrossedAt(y))
                .map(Node::busX)
                .filter(x -> x > from + HOP && x < to - 1)
                .distinct()
                .sorted()
                .toList();
        double at = from;
        for (double bar : bars) {
            plate.line(new Spot(at, y), new Spot(bar - HOP, y), pen);
            plate.hop(new Spot(bar, y), HOP, pen);
            at = bar + HOP;
        }
        plate.line(new Spot(at, y), new Spot(to, y), pen);
    }

    private void cells(Lane lane, Row row) {
        double at = lane.left();
        for (ElementCell cell : row.cells()) {
            cell.draw(new Spot(at + cell.width() / 2, row.y()));
            at += cell.width();
        }
    }

    private Node node(String code) {
        return Objects.requireNonNull(plan.nodes().get(code));
    }
}
