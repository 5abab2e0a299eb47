package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.review.BuildReview;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One rail: what it should have, what it has at worst, and what hangs on it. */
record RailRow(
        String code, String name, String note, String wanted, String has, String typical, String peak, String free) {

    static List<RailRow> of(BuildReview review) {
        return review.build().power().rails().stream()
                .map(rail -> row(rail, review))
                .toList();
    }

    private static RailRow row(Rail rail, BuildReview review) {
        Map<String, Double> figures = review.figures();
        String key = "power.rail." + rail.code() + ".";
        return new RailRow(
                rail.code(),
                rail.name(),
                fedBy(rail, review.build().power().feeds()),
                Electric.volts(rail.nominalV()) + ", " + Electric.range(rail.minV(), rail.maxV()),
                Electric.range(figures.get(key + "lowestV"), figures.get(key + "highestV")),
                Electric.amperes(figures.get(key + "typicalA")),
                Electric.amperes(figures.get(key + "peakA")),
                free(figures.get(key + "marginPercent")));
    }

    private static String fedBy(Rail rail, List<Feed> feeds) {
        List<Feed> own =
                feeds.stream().filter(feed -> feed.to().equals(rail.code())).toList();
        if (own.isEmpty()) {
            return "fed by nothing";
        }
        return "fed by " + own.stream().map(Feed::name).collect(Collectors.joining(", "))
                + (rail.redundant() ? "; each must carry it alone" : "");
    }

    private static String free(@Nullable Double percent) {
        return Electric.percent(percent);
    }
}
