package dev.ledgerwing.core.review;

import static dev.ledgerwing.core.Said.plain;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.correction.Correction;
import dev.ledgerwing.core.balance.correction.CorrectionFinder;
import dev.ledgerwing.core.balance.correction.CorrectionKind;
import dev.ledgerwing.core.balance.correction.PlacementFindings;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CorrectionReviewTest {

    /** 1 kg at 360 mm against 300 to 352 mm, a pack that may move, and a target that 15 g of ballast would break. */
    private static final Build TAIL_HEAVY = Ledgers.withTarget(
            1005,
            0.0,
            Ledgers.with(
                            placed("pack", 200, 300, new Travel(Length.ofMm(100), Length.ofMm(400))),
                            placed("rest", 800, 375, null))
                    .withGeometry(new Geometry(
                            null,
                            null,
                            null,
                            BalanceLimits.ofStations(Length.ofMm(300), Length.ofMm(352)),
                            null,
                            null,
                            null,
                            Length.ZERO,
                            null)));

    private static PartLine placed(String id, double grams, double xMm, @Nullable Travel travel) {
        return Ledgers.certain(id, grams)
                .withPlace(new LinePlace(Station.atX(Length.ofMm(xMm)), null, null, travel, null, null));
    }

    private static CorrectionReview reviewed(CorrectionKind kind) {
        BuildReview now = BuildReview.of(TAIL_HEAVY);
        Correction correction = CorrectionFinder.of(now.balance()).offers().stream()
                .filter(offer -> offer.kind() == kind)
                .findFirst()
                .orElseThrow();
        return CorrectionReview.of(now, correction);
    }

    @Test
    void aMovePutsTheBalanceRightAndBreaksNothing() {
        CorrectionReview move = reviewed(CorrectionKind.MOVE);
        assertThat(move.breaksSomething()).isFalse();
        assertThat(move.delta().findings())
                .extracting(change -> change.finding().code())
                .contains(BalanceFindings.CG);
    }

    @Test
    void ballastBreaksTheMassTarget() {
        CorrectionReview ballast = reviewed(CorrectionKind.BALLAST);
        assertThat(ballast.breaksSomething()).isTrue();
        assertThat(ballast.after().finding("mass.target").map(Finding::verdict)).contains(Verdict.BREAKS);
        assertThat(ballast.after().mass().predicted().minus(Mass.ofGrams(1000)))
                .isEqualTo(ballast.correction().cost());
    }

    @Test
    void theFindingCarriesTheCheapestThree() {
        BuildReview bare = BuildReview.of(TAIL_HEAVY);
        assertThat(bare.finding(BalanceFindings.CG).orElseThrow().remedies()).isEmpty();
        BuildReview review = BalanceRemedies.in(bare);
        List<Remedy> remedies = Said.remedies(review.finding(BalanceFindings.CG).orElseThrow());
        assertThat(remedies).hasSizeBetween(2, 3);
        assertThat(remedies.get(0))
                .isEqualTo(new Remedy("Move “Part pack” 50 mm forward, to station 250 mm.", Mass.ZERO, "pack"));
        assertThat(plain(remedies.get(1).sentence())).contains("ballast");
        assertThat(review.figures()).isEqualTo(bare.figures());
        assertThat(review.verdicts()).isEqualTo(bare.verdicts());
    }

    @Test
    void aReviewWithNothingToCorrectStaysAsItIs() {
        BuildReview review = BuildReview.of(Ledgers.with(placed("rest", 800, 375, null)));
        assertThat(BalanceRemedies.in(review)).isSameAs(review);
    }

    @Test
    void rulesOfPlacingArePartOfEveryReview() {
        Build close = TAIL_HEAVY.withKeepApart(
                List.of(new KeepApart("K1", "Pack clear of the rest", "pack", "rest", Length.ofMm(100))));
        Finding finding = BuildReview.of(close).finding(PlacementFindings.APART).orElseThrow();
        assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(Said.sentence(finding)).contains("75 mm apart between their stations, wanted are 100 mm at least");
    }
}
