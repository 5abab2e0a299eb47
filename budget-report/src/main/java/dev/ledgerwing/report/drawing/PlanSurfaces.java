package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.PlanPanel;
import dev.ledgerwing.report.drawing.BalanceView.PlanPoint;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;

/** Wing and tail from above, and dashed where they were before a change. */
record PlanSurfaces(Board board, Plate plate, PlanScale scale) {

    void draw() {
        BalanceView before = board.before();
        if (before != null) {
            outlines(before.wing(), Pen.PANEL_BEFORE, board.view().wing());
            outlines(before.tail(), Pen.PANEL_BEFORE, board.view().tail());
        }
        surface("wing", "Wing", board.view().wing());
        surface("tail", "Tail", board.view().tail());
    }

    private void outlines(List<PlanPanel> panels, Pen pen, List<PlanPanel> now) {
        if (!panels.equals(now)) {
            panels.forEach(panel -> plate.polygon(scale.spots(panel), pen));
        }
    }

    private void surface(String cssClass, String name, List<PlanPanel> panels) {
        if (panels.isEmpty()) {
            return;
        }
        DoubleSummaryStatistics across = panels.stream()
                .flatMap(panel -> panel.corners().stream())
                .mapToDouble(PlanPoint::yMm)
                .summaryStatistics();
        plate.open(cssClass, name + ", " + board.length(across.getMax() - across.getMin()) + " from tip to tip");
        panels.forEach(panel -> panel(panel));
        plate.close();
    }

    /** Joints between panels are drawn thin, and none where two sides meet on the centre line. */
    private void panel(PlanPanel panel) {
        List<Spot> corners = scale.spots(panel);
        plate.fill(corners, Pen.SURFACE);
        for (int corner = 0; corner < corners.size(); corner++) {
            int next = (corner + 1) % corners.size();
            PlanPoint from = panel.corners().get(corner);
            PlanPoint to = panel.corners().get(next);
            if (from.yMm() != to.yMm()) {
                plate.line(corners.get(corner), corners.get(next), Pen.OUTLINE);
            } else if (from.yMm() != 0) {
                plate.line(corners.get(corner), corners.get(next), isTip(from.yMm()) ? Pen.OUTLINE : Pen.RULE);
            }
        }
    }

    private boolean isTip(double yMm) {
        return Stream.of(board.view().wing(), board.view().tail())
                .anyMatch(panels -> panels.stream()
                                .flatMap(panel -> panel.corners().stream())
                                .mapToDouble(corner -> Math.abs(corner.yMm()))
                                .max()
                                .orElse(0)
                        == Math.abs(yMm));
    }
}
