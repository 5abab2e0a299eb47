package dev.ledgerwing.report.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** A straight piece of a line that is drawn. */
record Stroke(Spot from, Spot to, Pen pen) {

    boolean crosses(Box box) {
        return new Line2D.Double(from.x(), from.y(), to.x(), to.y())
                .intersects(new Rectangle2D.Double(box.left(), box.top(), box.width(), box.height()));
    }
}
