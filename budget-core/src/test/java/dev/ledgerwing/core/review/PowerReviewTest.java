package dev.ledgerwing.core.review;

import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.pack;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PowerReviewTest {

    /** Three cells of 3.7 V through a fuse of 10 A. */
    private static Build supply(PartLine... lines) {
        return build(
                List.of(pack("p", 3, 0)), List.of(rail("main", 11.1)), List.of(feed("p", "main", fuse(10))), lines);
    }

    private static PartLine drawing(double typicalA, double peakA) {
        return part("L", constantCurrent("main", typicalA, peakA));
    }

    private static List<ImpactPart> impact(Build before, Build after) {
        return ReviewDelta.between(BuildReview.of(before), BuildReview.of(after))
                .impact();
    }

    @Test
    void namesItsFigures() {
        Map<String, Double> figures = BuildReview.of(supply(drawing(4, 7))).figures();
        assertThat(figures.keySet().stream().filter(name -> name.startsWith("power.")))
                .containsExactly(
                        "power.worstMarginPercent",
                        "power.enduranceMinutes",
                        "power.source.p.loadPercent",
                        "power.rail.main.typicalA",
                        "power.rail.main.peakA",
                        "power.rail.main.marginPercent",
                        "power.rail.main.lowestV",
                        "power.rail.main.highestV",
                        "power.element.p-main.1.loadPercent",
                        "power.element.p-main.1.marginPercent");
        assertThat(figures)
                .containsEntry("power.rail.main.typicalA", 4.0)
                .containsEntry("power.rail.main.peakA", 7.0)
                .containsEntry("power.rail.main.lowestV", 9.0)
                .containsEntry("power.source.p.loadPercent", 0.7);
        assertThat(figures.get("power.element.p-main.1.loadPercent")).isCloseTo(70, within(1e-9));
        assertThat(figures.get("power.worstMarginPercent")).isCloseTo(30, within(1e-9));
    }

    @Test
    void aBuildWithoutASupplyIsNotKnownAndHasNoFigures() {
        BuildReview review = BuildReview.of(Ledgers.with());
        assertThat(review.verdict(Budget.POWER)).isEqualTo(Verdict.UNKNOWN);
        assertThat(review.findings(Budget.POWER)).hasSize(1);
        assertThat(review.figures().keySet()).noneMatch(name -> name.startsWith("power."));
    }

    @Test
    void tellsHowMuchMoreTheHeaviestRailCarries() {
        assertThat(impact(supply(drawing(4, 6.2)), supply(drawing(4, 7.1))))
                .extracting(part -> Said.plain(part.text()), ImpactPart::verdict)
                .contains(tuple("Rail main: 62 → 71 %.", Verdict.HOLDS));
        assertThat(impact(supply(drawing(4, 6.2)), supply(drawing(4, 12))))
                .extracting(part -> Said.plain(part.text()), ImpactPart::verdict)
                .contains(tuple("Rail main: 62 → 120 %.", Verdict.BREAKS));
    }

    @Test
    void isSilentWhereNoRailsLoadChanges() {
        assertThat(impact(supply(drawing(4, 6.2)), supply(drawing(4.5, 6.2))))
                .extracting(ImpactPart::text)
                .noneMatch(text -> text.contains("Rail main"));
    }

    private static Build twoFusesOfOneName(FeedElement first, FeedElement second) {
        return build(
                List.of(pack("p", 3, 0)),
                List.of(rail("one", 11.1), rail("two", 11.1)),
                List.of(feed("p", "one", first), feed("p", "two", second)),
                part("L", constantCurrent("one", 1, 1)),
                part("M", constantCurrent("two", 1, 1)));
    }

    /** Both fuses have a finding of the same rule under the same name. */
    @Test
    void tellsNoChangeOfFindingsOfOneNameThatHaveNotChanged() {
        FeedElement unrated = FeedElement.rated("Fuse", FeedElement.Kind.FUSE, null);
        FeedElement rated = FeedElement.rated("Fuse", FeedElement.Kind.FUSE, 1.1);
        BuildReview neither = BuildReview.of(twoFusesOfOneName(unrated, unrated));
        BuildReview first = BuildReview.of(twoFusesOfOneName(rated, unrated));

        assertThat(neither.findings())
                .filteredOn(each -> each.subject().equals("Fuse"))
                .hasSize(2);
        assertThat(ReviewDelta.between(neither, neither).findings()).isEmpty();
        assertThat(ReviewDelta.between(neither, first).findings())
                .filteredOn(change -> change.finding().code().equals("power.element"))
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.kind()).isEqualTo(FindingChange.Kind.CHANGED);
                    assertThat(change.finding().verdict()).isEqualTo(Verdict.TIGHT);
                });
    }
}
