package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.load;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class StructureRuleTest {

    private static final Rail MAIN = rail("main", 5);
    private static final Build WHOLE = build(
            List.of(bench("b", 5)),
            List.of(MAIN),
            List.of(feed("b", "main")),
            part("L", constantCurrent("main", 1, 1)));

    @Test
    void anEmptyRecordIsToldWhereToBeginAndNothingElse() {
        assertThat(Found.all(Ledgers.with(part("L", load(null, Draws.CONSTANT_CURRENT, 1.0, 1.0)))))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo(StructureRule.BLANK);
                    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
                    assertThat(finding.sentence()).contains("begin with a source");
                });
    }

    @Test
    void aWholeSupplyHasNoneOfTheseFindings() {
        for (String code : List.of(
                StructureRule.BLANK,
                StructureRule.LOOP,
                StructureRule.UNFED,
                StructureRule.NO_RAIL,
                StructureRule.UNUSED)) {
            Found.none(code, WHOLE);
        }
    }

    @Test
    void railsThatFeedEachOtherBreakAndAreNotSolved() {
        Build build = build(
                List.of(bench("b", 5)),
                List.of(MAIN, rail("one", 5), rail("two", 5), rail("behind", 5)),
                List.of(
                        feed("b", "main"),
                        feed("main", "one"),
                        feed("one", "two"),
                        feed("two", "one"),
                        feed("two", "behind")),
                part("L", constantCurrent("two", 1, 1)));
        assertThat(Found.said(StructureRule.LOOP, Verdict.BREAKS, build)).contains("“Rail one” and “Rail two”");
        NetworkStatement statement = NetworkStatement.of(PowerNetwork.of(build));
        assertThat(statement.rails())
                .extracting(each -> each.rail().code())
                .containsExactly("main", "one", "two", "behind");
        assertThat(statement.rails()).extracting(RailState::isSolved).containsExactly(true, false, false, false);
        assertThat(statement.rail("two").orElseThrow().lowestV()).isNull();
        assertThat(statement.source("b").orElseThrow().verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void aRailWithLoadsAndNoFeedBreaks() {
        Build build = build(List.of(), List.of(MAIN), List.of(), part("L", constantCurrent("main", 1, 1)));
        assertThat(Found.said(StructureRule.UNFED, Verdict.BREAKS, build))
                .isEqualTo("“Rail main” has no feed: “Part L” stays dark.");
    }

    @Test
    void aRailWithoutLoadsAndFeedIsTight() {
        Build build = build(List.of(), List.of(MAIN), List.<Feed>of());
        assertThat(Found.said(StructureRule.UNFED, Verdict.TIGHT, build))
                .isEqualTo("“Rail main” has no feed; nothing hangs on it yet.");
    }

    @Test
    void aRailBehindAnUnfedRailIsUnfedItself() {
        Build build = build(
                List.of(),
                List.of(MAIN, rail("more", 5)),
                List.of(feed("main", "more")),
                part("L", constantCurrent("more", 1, 1)));
        assertThat(Found.of(StructureRule.UNFED, build))
                .extracting(Finding::subject, Finding::verdict)
                .containsExactly(tuple("Rail main", Verdict.TIGHT), tuple("Rail more", Verdict.BREAKS));
    }

    @Test
    void aLoadOnNoRailIsNotKnown() {
        Build build = WHOLE.withLines(List.of(part("L", load(null, Draws.CONSTANT_CURRENT, 1.0, 1.0))));
        assertThat(Found.said(StructureRule.NO_RAIL, Verdict.UNKNOWN, build)).contains("“Part L”", "no rail");
        assertThat(Found.only(StructureRule.NO_RAIL, build).line()).isEqualTo("L");
    }

    @Test
    void aSourceThatFeedsNothingIsTight() {
        Build build = WHOLE.withSources(List.of(bench("b", 5), bench("c", 5)));
        assertThat(Found.said(StructureRule.UNUSED, Verdict.TIGHT, build)).contains("“Bench c” feeds nothing");
    }
}
