package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Masses are kept to the milligram: of a kilogram or so on arms of 1.3 m that is a few micrometres of CG, and ten times that in height. */
class WeighingInvariantsTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void weighingExactlyGivesTheCgOfTheLedger(long seed) {
        RandomWeighings random = new RandomWeighings(seed);
        Build build = random.build();
        LedgerSide truth = Weighings.level().ledger(build);
        ScalesAnswer answer = Weighings.report(build, random.exactly(truth, 0, null))
                .reading()
                .answer()
                .orElseThrow();
        assertThat(answer.mass()).isEqualTo(truth.mass());
        near(answer, truth, Axis.X, 0.01);
        near(answer, truth, Axis.Y, 0.01);
        assertThat(answer.joint().centre(Axis.Z)).isEmpty();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void weighingTwiceGivesTheHeightToo(long seed) {
        RandomWeighings random = new RandomWeighings(seed);
        Build build = random.build();
        LedgerSide truth = Weighings.level().ledger(build);
        ScalesAnswer answer = Weighings.report(build, random.exactly(truth, 2, 14.0))
                .reading()
                .answer()
                .orElseThrow();
        near(answer, truth, Axis.X, 0.05);
        near(answer, truth, Axis.Y, 0.01);
        near(answer, truth, Axis.Z, 0.2);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void nothingIsBookedWhereTheLedgerIsRight(long seed) {
        RandomWeighings random = new RandomWeighings(seed);
        Build build = random.build();
        WeighInReport report =
                Weighings.report(build, random.exactly(Weighings.level().ledger(build), 0, null));
        assertThat(report.comparison().orElseThrow().worst()).isEqualTo(Significance.AGREES);
        assertThat(WeighInDeeds.booked(build, report, WeighInDeeds.Choice.AS_ADVISED))
                .isEqualTo(build);
    }

    private static void near(ScalesAnswer answer, LedgerSide truth, Axis axis, double mm) {
        assertThat(answer.joint().centre(axis).orElseThrow().mm())
                .as(axis.letter())
                .isCloseTo(truth.joint().centre(axis).orElseThrow().mm(), within(mm));
    }
}
