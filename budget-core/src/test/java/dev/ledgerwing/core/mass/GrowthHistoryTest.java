package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.quantity.Mass;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrowthHistoryTest {

    private static final double TARGET_G = 6800;

    @Test
    void keepsTheLastRevisionOfEachDayInUniversalTime() {
        GrowthHistory history = GrowthHistory.of(List.of(
                at(1, "2025-03-01T08:00:00Z", 5000),
                at(2, "2025-03-01T23:59:59.999999Z", 5100),
                at(3, "2025-03-02T00:00:00Z", 5200)));
        assertThat(history.points()).extracting(GrowthHistory.Point::revision).containsExactly(2, 3);
        assertThat(history.points())
                .extracting(GrowthHistory.Point::day)
                .containsExactly(LocalDate.of(2025, 3, 1), LocalDate.of(2025, 3, 2));
    }

    @Test
    void takesRevisionsInAnyOrder() {
        List<RevisionMass> revisions = new ArrayList<>(growing(6000, 12.5, 9));
        GrowthHistory inOrder = GrowthHistory.of(revisions);
        Collections.shuffle(revisions, new Random(11));
        assertThat(GrowthHistory.of(revisions)).isEqualTo(inOrder);
    }

    @Test
    void keepsTheTargetOfTheTime() {
        Instant first = Instant.parse("2025-03-01T08:00:00Z");
        Instant second = Instant.parse("2025-03-05T08:00:00Z");
        GrowthHistory history = GrowthHistory.of(List.of(
                new RevisionMass(1, first, null, Mass.ofGrams(5000), Mass.ofGrams(5500)),
                new RevisionMass(2, second, Mass.ofGrams(6800), Mass.ofGrams(5000), Mass.ofGrams(5500))));
        assertThat(history.points()).extracting(GrowthHistory.Point::target).containsExactly(null, Mass.ofGrams(6800));
    }

    @ParameterizedTest
    @CsvSource({"4, false", "5, true"})
    void drawsATrendFromFiveDaysOn(int days, boolean trend) {
        assertThat(GrowthHistory.of(growing(6000, 10, days)).trend() != null).isEqualTo(trend);
    }

    @Test
    void countsDaysAndNotRevisionsForATrend() {
        List<RevisionMass> oneDay = List.of(
                at(1, "2025-03-01T08:00:00Z", 5000),
                at(2, "2025-03-01T09:00:00Z", 5100),
                at(3, "2025-03-01T10:00:00Z", 5200),
                at(4, "2025-03-01T11:00:00Z", 5300),
                at(5, "2025-03-01T12:00:00Z", 5400));
        assertThat(GrowthHistory.of(oneDay).trend()).isNull();
    }

    @Test
    void findsTheSlopeOfAStraightLine() {
        assertThat(trend(growing(6000, 12.5, 9)).gramsPerDay()).isCloseTo(12.5, within(1e-9));
    }

    /** By derivation: days 0, 1, 2, 4, 8 with 0, 3, 1, 6, 10 g: slope (5 x 109 - 15 x 20) / (5 x 85 - 15^2) = 1.225 g a day. */
    @Test
    void findsTheLeastSquaresSlopeByDateWithUnevenSteps() {
        List<RevisionMass> revisions =
                List.of(onDay(0, 6000), onDay(1, 6003), onDay(2, 6001), onDay(4, 6006), onDay(8, 6010));
        assertThat(trend(revisions).gramsPerDay()).isCloseTo(1.225, within(1e-9));
    }

    /** 6040 g on day 4 and 10 g a day: 6800 g is reached after 76 days more and left behind on the 77th. */
    @Test
    void foretellsTheFirstDayAboveTheTarget() {
        assertThat(trend(growing(6000, 10, 5)).crossing()).isEqualTo(day(4 + 77));
    }

    @Test
    void foretellsTheMassOnALaterDayFromTheLastPoint() {
        assertThat(trend(growing(6000, 10, 5)).predictedOn(day(14))).isEqualTo(Mass.ofGrams(6140));
    }

    @ParameterizedTest
    @CsvSource({"6000, -10", "6000, 0", "6790, 10", "6000, 0.01"})
    void foretellsNoCrossingWhereMassFallsStaysIsOverOrTakesLongerThanTenYears(double startG, double gramsPerDay) {
        assertThat(trend(growing(startG, gramsPerDay, 5)).crossing()).isNull();
    }

    @Test
    void foretellsNoCrossingWithoutATarget() {
        List<RevisionMass> untargeted = growing(6000, 10, 5).stream()
                .map(each -> new RevisionMass(each.number(), each.moment(), null, each.basic(), each.predicted()))
                .toList();
        assertThat(trend(untargeted).crossing()).isNull();
    }

    @Test
    void isEmptyWithoutRevisions() {
        assertThat(GrowthHistory.of(List.of()).points()).isEmpty();
    }

    private static GrowthTrend trend(List<RevisionMass> revisions) {
        return Objects.requireNonNull(GrowthHistory.of(revisions).trend());
    }

    private static List<RevisionMass> growing(double fromG, double gramsPerDay, int days) {
        List<RevisionMass> revisions = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            revisions.add(onDay(day, fromG + gramsPerDay * day));
        }
        return revisions;
    }

    private static LocalDate day(int number) {
        return LocalDate.of(2025, 2, 26).plusDays(number);
    }

    private static RevisionMass onDay(int day, double predictedG) {
        return at(day + 1, day(day) + "T12:00:00Z", predictedG);
    }

    private static RevisionMass at(int number, String moment, double predictedG) {
        Mass predicted = Mass.ofGrams(predictedG);
        return new RevisionMass(number, Instant.parse(moment), Mass.ofGrams(TARGET_G), predicted, predicted);
    }
}
