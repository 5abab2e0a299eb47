package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.PlanPanel;
import dev.ledgerwing.report.drawing.BalanceView.PlanPoint;
import java.util.List;

/**
 * One scale for both axes of the airframe from above, nose up.
 *
 * @param x the stations, down the drawing
 * @param centre where the centre line is, across
 */
record PlanScale(Scale x, double centre) {

    Spot spot(PlanPoint point) {
        return new Spot(centre + point.yMm() * x.perMm(), x.at(point.xMm()));
    }

    Spot spot(double xMm, double yMm) {
        return spot(new PlanPoint(xMm, yMm));
    }

    List<Spot> spots(PlanPanel panel) {
        return panel.corners().stream().map(this::spot).toList();
    }

    /** The span station at a place across. */
    double yMm(double across) {
        return (across - centre) / x.perMm();
    }
}
