package dev.ledgerwing.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.correction.Correction;
import dev.ledgerwing.core.balance.correction.CorrectionFinder;
import dev.ledgerwing.core.balance.correction.CorrectionKind;
import dev.ledgerwing.core.balance.weighing.WeighInReport;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the demo fleet is there to show about balance. */
class SeedBalanceTest {

    private static Build last(String code) {
        return SeedFleet.airframes().stream()
                .filter(airframe -> airframe.code().equals(code))
                .findFirst()
                .orElseThrow()
                .last()
                .build();
    }

    private static List<Verdict> cg(Build build) {
        return BuildReview.of(build).findings(Budget.BALANCE).stream()
                .filter(finding -> finding.code().equals(BalanceFindings.CG))
                .map(Finding::verdict)
                .toList();
    }

    @Test
    void curlewIsTailHeavyUntilItsPackIsMovedForward() {
        Build curlew = last("curlew");
        assertThat(cg(curlew)).hasSize(4).containsOnly(Verdict.BREAKS);

        List<Correction> offers =
                CorrectionFinder.of(BalanceStatement.of(curlew)).offers();

        Correction first = offers.get(0);
        assertThat(first.kind()).isEqualTo(CorrectionKind.MOVE);
        assertThat(first.line()).isEqualTo("L002");
        assertThat(first.cost()).isEqualTo(Mass.ZERO);
        assertThat(cg(first.after())).hasSize(4).containsOnly(Verdict.HOLDS);
    }

    @Test
    void dunlinHoldsAndItsWeighInSaysWhatWasBooked() {
        Build dunlin = last("dunlin");
        assertThat(cg(dunlin)).hasSize(2).containsOnly(Verdict.HOLDS);
        assertThat(WeighInReport.all(dunlin, Figures.METRIC)).singleElement().satisfies(report -> {
            assertThat(report.isRefused()).isFalse();
            assertThat(report.comparison().orElseThrow().massDifferenceG()).isCloseTo(17.1, within(1e-6));
        });
    }

    static Stream<SeedRevision> revisions() {
        return SeedFleet.airframes().stream().flatMap(airframe -> airframe.revisions().stream());
    }

    @ParameterizedTest
    @MethodSource("revisions")
    void noPartOfTheDemoFleetLooksMisplaced(SeedRevision revision) {
        assertThat(BuildReview.of(revision.build()).findings(Budget.BALANCE))
                .isNotEmpty()
                .noneMatch(finding -> finding.code().equals("balance.far-away")
                        || finding.code().equals("balance.inertia"));
    }
}
