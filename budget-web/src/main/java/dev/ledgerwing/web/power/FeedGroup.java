package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One feed with its elements in their order.
 *
 * @param way from where to where, in words
 * @param hasWire whether a wire is among them; without one its drop and its heat are judged by nobody
 */
record FeedGroup(String code, String name, String way, List<Row> rows, boolean hasWire) {

    /** One element, load against rating. */
    record Row(String name, String what, String rating, String load, String free, String reserve) {}

    static List<FeedGroup> of(BuildReview review) {
        return review.build().power().feeds().stream()
                .map(feed -> group(feed, review))
                .toList();
    }

    private static FeedGroup group(Feed feed, BuildReview review) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < feed.elements().size(); i++) {
            rows.add(row(feed, i, review));
        }
        Power power = review.build().power();
        return new FeedGroup(
                feed.code(),
                feed.name(),
                name(feed.from(), power) + " to " + name(feed.to(), power),
                rows,
                feed.elements().stream().anyMatch(element -> element.kind() == FeedElement.Kind.WIRE));
    }

    private static String name(String code, Power power) {
        return Stream.concat(
                        power.sources().stream()
                                .filter(each -> each.code().equals(code))
                                .map(PowerSource::name),
                        power.rails().stream()
                                .filter(each -> each.code().equals(code))
                                .map(Rail::name))
                .findFirst()
                .orElse(code);
    }

    private static Row row(Feed feed, int index, BuildReview review) {
        FeedElement element = feed.elements().get(index);
        PowerRules rules = review.build().power().rules();
        String key = "power.element." + feed.code() + "." + (index + 1) + ".";
        return new Row(
                element.name(),
                new ElementWords(review.units()).element(element),
                Electric.amperes(element.ratingA()),
                Electric.percent(review.figures().get(key + "loadPercent")),
                Electric.percent(review.figures().get(key + "marginPercent")),
                Figures.percent(rules.reserve(element.kind())));
    }
}
