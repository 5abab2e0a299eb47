package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.linear;
import static dev.ledgerwing.core.power.Supplies.load;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.redundant;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BackFeedRuleTest {

    private static final Rail MAIN = rail("main", 5);

    private static Build two(Rail rail, Feed first, Feed second, ElectricalLoad load) {
        return build(List.of(bench("a", 5), bench("b", 4.8)), List.of(rail), List.of(first, second), part("L", load));
    }

    @Test
    void twoSuppliesTiedTogetherWithoutDiodesDragEachOtherDown() {
        ElectricalLoad load = constantCurrent("main", 1, 1);
        Feed open = feed("a", "main");
        Feed guarded = feed("b", "main", diode(0.3));
        assertThat(Found.said(BackFeedRule.BACK, Verdict.TIGHT, two(MAIN, open, guarded, load)))
                .contains("“Feed a to main”");
        assertThat(Found.said(
                        BackFeedRule.BACK,
                        Verdict.BREAKS,
                        two(redundant("main", 5, 0, 6), open, feed("b", "main"), load)))
                .contains("“Feed a to main” and “Feed b to main”");
        Found.none(BackFeedRule.BACK, two(MAIN, feed("a", "main", diode(0.3)), guarded, load));
        Found.none(BackFeedRule.BACK, two(MAIN, feed("a", "main", linear(4, 0.5)), guarded, load));
    }

    @Test
    void twoWaysFromOneSourceNeedNoDiodes() {
        Build build = build(
                List.of(bench("a", 5)),
                List.of(rail("one", 5), MAIN),
                List.of(feed("a", "one"), feed("a", "main"), feed("one", "main")),
                part("L", constantCurrent("main", 1, 1)));
        Found.none(BackFeedRule.BACK, build);
    }

    /** Back from the last rail there are more than a thousand million ways to the sources; each rail is come to once. */
    @Test
    void manyWaysBackAreNotEachGone() {
        List<Rail> rails = new ArrayList<>();
        List<Feed> feeds = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            rails.add(rail("r" + i, 5));
            feeds.add(feed(i == 0 ? "a" : "r" + (i - 1), "r" + i));
            feeds.add(feed(i < 2 ? "b" : "r" + (i - 2), "r" + i));
        }
        Build build =
                build(List.of(bench("a", 5), bench("b", 5)), rails, feeds, part("L", constantCurrent("r49", 1, 1)));

        assertThat(Found.of(BackFeedRule.BACK, build)).hasSize(50);
    }
}
