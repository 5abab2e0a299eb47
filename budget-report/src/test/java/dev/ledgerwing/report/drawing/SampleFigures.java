package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Made-up figures: every verdict, shares from nothing to far too much; and, where one is named, a feed that has failed. */
final class SampleFigures extends FeedFigures {

    private static final double[] PERCENT = {62.4, 88, 112.6, 4, 79.96, 340};

    private static final List<Verdict> VERDICTS = List.of(Verdict.values());

    private final @Nullable String failed;

    SampleFigures(Build build, @Nullable String failed) {
        super(build);
        this.failed = failed;
    }

    @Override
    String failure() {
        return failed == null ? "" : "Failed: the second element of " + failed + ", open.";
    }

    @Override
    LoadMark load(PowerSource source) {
        return new LoadMark(71.0, 20, Verdict.HOLDS, "125\u2009A");
    }

    @Override
    LoadMark load(Feed feed, int index) {
        LoadMark recorded = super.load(feed, index);
        int pick = (feed.code().length() + index) % (PERCENT.length + 1);
        if (pick == PERCENT.length) {
            return new LoadMark(null, recorded.reservePercent(), Verdict.UNKNOWN, "");
        }
        double percent = PERCENT[pick];
        Verdict verdict = percent > 100
                ? Verdict.BREAKS
                : percent > 100 - recorded.reservePercent() ? Verdict.TIGHT : Verdict.HOLDS;
        return new LoadMark(percent, recorded.reservePercent(), verdict, recorded.rating());
    }

    @Override
    Verdict verdict(Rail rail) {
        return VERDICTS.get(rail.code().length() % VERDICTS.size());
    }

    @Override
    List<String> facts(Rail rail) {
        return List.of("solved 4.91 to 5.12\u2009V", "typical 1.3\u2009A, peak 3.45\u2009A");
    }

    @Override
    State state(PowerSource source) {
        return State.LIT;
    }

    @Override
    State state(Rail rail) {
        return isBehind(rail.code()) ? State.DARK : State.LIT;
    }

    @Override
    State state(Feed feed) {
        return isFailed(feed) || isBehind(feed.from()) ? State.DARK : State.LIT;
    }

    @Override
    State state(Feed feed, int index) {
        return isFailed(feed) && index == 1 ? State.FAILED : state(feed);
    }

    @Override
    String failureOf(Feed feed, int index) {
        return state(feed, index) == State.FAILED ? "open" : "";
    }

    private boolean isFailed(Feed feed) {
        return feed.code().equals(failed);
    }

    private boolean isBehind(String code) {
        return failed != null && code.equals("servos");
    }
}
