package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.wire.WireGauge;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is solved of a supply, and what has failed in it: so far nothing. */
class FeedFigures {

    private final Build build;

    FeedFigures(Build build) {
        this.build = build;
    }

    Build build() {
        return build;
    }

    String failure() {
        return "";
    }

    LoadMark load(PowerSource source) {
        return new LoadMark(null, build.power().rules().sourceReserve(), null, "");
    }

    LoadMark load(Feed feed, int index) {
        FeedElement element = feed.elements().get(index);
        return new LoadMark(null, build.power().rules().reserve(element.kind()), null, rating(element));
    }

    static String rating(FeedElement element) {
        Double rating = element.ratingA();
        WireRun wire = element.wire();
        return rating != null
                ? PowerWords.amperes(rating)
                : wire == null ? "" : WireGauge.of(wire.awg()).label();
    }

    @Nullable
    Verdict verdict(Rail rail) {
        return null;
    }

    List<String> facts(Rail rail) {
        return List.of();
    }

    State state(PowerSource source) {
        return State.LIT;
    }

    State state(Rail rail) {
        return State.LIT;
    }

    State state(Feed feed) {
        return State.LIT;
    }

    State state(Feed feed, int index) {
        return State.LIT;
    }

    String failureOf(Feed feed, int index) {
        return "";
    }
}
