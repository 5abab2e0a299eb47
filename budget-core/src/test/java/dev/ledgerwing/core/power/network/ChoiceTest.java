package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.phase;
import static dev.ledgerwing.core.power.Supplies.rail;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ChoiceTest {

    @Test
    void ofASmallSupplyManyAreLookedAtAndOfALargeOneFew() {
        assertThat(Choice.most(1, 10, 10)).isEqualTo(256);
        assertThat(Choice.most(12, 100, 50)).isEqualTo(50);
        assertThat(Choice.most(12, 200, 1000)).isEqualTo(1);
        assertThat(Choice.most(0, 0, 0)).isEqualTo(256);
    }

    /** 16 choices, of which every one would be solved for 20 phases, with every failure, for 2000 loads. */
    @Test
    void whatALargeSupplyLeavesOutIsSaid() {
        assertThat(Found.said(GapRule.CHOICES, Verdict.UNKNOWN, fourTwiceFed(20, 2000)))
                .contains("more than 3 ways");
        Found.none(GapRule.CHOICES, fourTwiceFed(1, 20));
    }

    @Test
    void nothingIsCalledFineWhereSomeWereLeftOut() {
        assertThat(Found.of(CurrentRule.CARRIES, fourTwiceFed(1, 20))).hasSize(1);
        assertThat(Found.of(RailRule.RAIL, fourTwiceFed(1, 20))).hasSize(4);
        Found.none(CurrentRule.CARRIES, fourTwiceFed(20, 2000));
        Found.none(RailRule.RAIL, fourTwiceFed(20, 2000));
    }

    private static Build fourTwiceFed(int phases, int loads) {
        List<Rail> rails = new ArrayList<>();
        List<Feed> feeds = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            rails.add(rail("r" + i, 5));
            feeds.add(feed("a", "r" + i, diode(0.3)));
            feeds.add(feed("b", "r" + i, diode(0.3)));
        }
        List<Phase> all =
                IntStream.range(0, phases).mapToObj(i -> phase("p" + i)).toList();
        return build(
                        List.of(bench("a", 5), bench("b", 5)),
                        rails,
                        feeds,
                        IntStream.range(0, loads)
                                .mapToObj(i -> part("L" + i, constantCurrent("r" + i % 4, 0.01, 0.01)))
                                .toArray(PartLine[]::new))
                .withPhases(all);
    }
}
