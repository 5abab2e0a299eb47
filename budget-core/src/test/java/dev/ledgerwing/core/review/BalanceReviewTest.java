package dev.ledgerwing.core.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BalanceReviewTest {

    /** Chord 200 mm from 500 mm on; without a tail and with a body shift of nothing the neutral point lies at 550 mm. */
    private static final Geometry WINGED = new Geometry(
            new Surface(
                    Station.atX(Length.ofMm(500)),
                    true,
                    List.of(new Panel(Length.ofMm(1000), Length.ofMm(200), Length.ofMm(200), Length.ZERO, 0))),
            null,
            0.0,
            BalanceLimits.ofPercentMac(10, 20),
            null,
            null,
            null,
            null,
            null);

    @Test
    void givesTheFiguresOfTheDesignCaseAndOfEachCase() {
        Build build = Ledgers.withCases(
                        Ledgers.with(at("body", 900, 540), at("pack", 100, 440)),
                        Ledgers.loadCase("bench", Purpose.GROUND, List.of("pack")))
                .withGeometry(WINGED);
        Map<String, Double> figures = BuildReview.of(build).figures();
        assertThat(figures)
                .containsEntry("balance.cgXMm", 530.0)
                .containsEntry("balance.cgYMm", 0.0)
                .containsEntry("balance.cgZMm", 0.0)
                .containsEntry("balance.cgPercentMac", 15.0)
                .containsEntry("balance.predictedCgXMm", 530.0)
                .containsEntry("balance.predictedCgPercentMac", 15.0)
                .containsEntry("balance.standardUncertaintyMm", 0.0)
                .containsEntry("balance.unplacedParts", 0.0)
                .containsEntry("balance.macMm", 200.0)
                .containsEntry("balance.leMacXMm", 500.0)
                .containsEntry("balance.wingAreaM2", 0.4)
                .containsEntry("balance.forwardLimitXMm", 520.0)
                .containsEntry("balance.aftLimitXMm", 540.0)
                .containsEntry("balance.neutralPointPercentMac", 25.0)
                .containsEntry("balance.staticMarginPercent", 10.0)
                .containsEntry("balance.bench.cgXMm", 540.0)
                .containsEntry("balance.bench.predictedCgYMm", 0.0);
        assertThat(figures.get("balance.aftLimitPercentMac")).isCloseTo(20, within(1e-9));
    }

    @Test
    void leavesOutWhatIsNotKnown() {
        assertThat(BuildReview.of(Ledgers.with(Ledgers.certain("a", 100))).figures())
                .containsEntry("balance.unplacedParts", 1.0)
                .doesNotContainKeys(
                        "balance.cgXMm", "balance.macMm", "balance.forwardLimitXMm", "balance.neutralPointPercentMac");
    }

    @Test
    void findsTheBalanceOfACaseByItsName() {
        BuildReview review = BuildReview.of(Ledgers.with(at("body", 1000, 530)).withGeometry(WINGED));
        assertThat(review.finding(BalanceFindings.CG, "All up").orElseThrow().verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(review.finding(BalanceFindings.CG, "Case other")).isEmpty();
        assertThat(review.verdict(Budget.BALANCE)).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void tellsThatTheCgMovesAndStillHolds() {
        assertThat(impact(530, 533.1)).isEqualTo("CG moves 3.1 mm aft, still holds.");
        assertThat(impact(530, 527)).isEqualTo("CG moves 3 mm forward, still holds.");
        assertThat(impact(530, 530)).isEqualTo("CG unchanged, still holds.");
    }

    @Test
    void tellsThatTheCgLeavesItsBandOnceOnly() {
        BuildReview before = BuildReview.of(whole(530));
        BuildReview after = BuildReview.of(whole(508));
        List<ImpactPart> parts = ReviewDelta.between(before, after).impact();
        assertThat(parts).extracting(ImpactPart::verdict).contains(Verdict.BREAKS);
        assertThat(parts.stream().map(part -> Said.plain(part.text())).toList())
                .contains("CG moves 22 mm forward, now breaks: nose-heavy by 12 mm.")
                .noneMatch(text -> text.startsWith("Nose-heavy"));
    }

    @Test
    void tellsWhereItBalancesOnceThatIsKnown() {
        BuildReview before =
                BuildReview.of(Ledgers.with(Ledgers.certain("body", 1000)).withGeometry(WINGED));
        assertThat(said(before, BuildReview.of(whole(530)))).isEqualTo("Balances at 530 mm, now holds.");
    }

    private static String impact(double fromXMm, double toXMm) {
        return said(BuildReview.of(whole(fromXMm)), BuildReview.of(whole(toXMm)));
    }

    /** The second sentence. */
    private static String said(BuildReview before, BuildReview after) {
        return Said.plain(ReviewDelta.between(before, after).impact().get(1).text());
    }

    private static Build whole(double xMm) {
        return Ledgers.with(at("body", 1000, xMm)).withGeometry(WINGED);
    }

    private static PartLine at(String id, double grams, double xMm) {
        return Ledgers.certain(id, grams)
                .withPlace(new LinePlace(Station.atX(Length.ofMm(xMm)), Length.ZERO, null, null, null, null));
    }
}
