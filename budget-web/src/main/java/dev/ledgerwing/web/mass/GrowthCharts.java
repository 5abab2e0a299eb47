package dev.ledgerwing.web.mass;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.chart.GrowthChart;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Draws growth charts, and keeps the latest: drawing one takes longer than all the rest of the page, and equal histories look alike. */
@Component
class GrowthCharts {

    private static final int MOST_KEPT = 200;

    private record Drawn(GrowthHistory history, Figures units) {}

    private final Cache<Drawn, String> charts =
            Caffeine.newBuilder().maximumSize(MOST_KEPT).build();

    /** An SVG element to stand in a page; null while there is but one day. */
    @Nullable
    String of(GrowthHistory history, Figures units) {
        return history.points().size() < 2
                ? null
                : charts.get(new Drawn(history, units), drawn -> GrowthChart.svg(drawn.history(), drawn.units()));
    }
}
