package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;

/** What a scale showed, ready to be shown. */
record SupportRow(String name, String x, String y, String reading, String tare, String tilted) {

    static List<SupportRow> of(WeighIn weighIn, Figures figures) {
        return weighIn.supports().stream().map(each -> row(each, figures)).toList();
    }

    private static SupportRow row(Support support, Figures figures) {
        Mass tilted = support.tiltedReading();
        return new SupportRow(
                support.name(),
                figures.length(support.station().x()),
                figures.length(support.station().y()),
                figures.mass(support.reading()),
                figures.mass(support.tare()),
                tilted == null ? "–" : figures.mass(tilted));
    }
}
