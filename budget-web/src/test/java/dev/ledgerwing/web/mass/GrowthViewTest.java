package dev.ledgerwing.web.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.mass.RevisionMass;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Five days from 1 March 2026 on, 1000 g on the first. */
class GrowthViewTest {

    private static final Instant FIRST = Instant.parse("2026-03-01T12:00:00Z");

    private static List<String> said(double gramsADay, @Nullable Double targetG, Figures figures) {
        Mass target = targetG == null ? null : Mass.ofGrams(targetG);
        GrowthHistory history = GrowthHistory.of(IntStream.range(0, 5)
                .mapToObj(day -> {
                    Mass mass = Mass.ofGrams(1000 + gramsADay * day);
                    return new RevisionMass(day + 1, FIRST.plus(Duration.ofDays(day)), target, mass, mass);
                })
                .toList());
        return GrowthView.of(history, null, figures).sentences().stream()
                .map(text -> text.replace('\u2009', ' '))
                .toList();
    }

    private static List<String> said(double gramsADay, @Nullable Double targetG) {
        return said(gramsADay, targetG, Figures.METRIC);
    }

    @Test
    void namesTheDayOnWhichTheTargetIsCrossed() {
        assertThat(said(2, 1100.0))
                .containsExactly(
                        "Since 1 Mar 2026 the predicted mass has grown by about 14 g a week.",
                        "If it went on like this from 5 Mar 2026, it would cross the target of 1100 g on 21 Apr 2026.");
    }

    @Test
    void saysSoWhereNothingIsCrossed() {
        assertThat(said(2, null)).last().isEqualTo("No target is set that it could cross.");
        assertThat(said(2, 900.0)).last().isEqualTo("It is above the target already.");
        assertThat(said(-2, 1100.0))
                .containsExactly(
                        "Since 1 Mar 2026 the predicted mass has fallen by about 14 g a week.",
                        "It is not growing towards the target.");
        assertThat(said(0, 1100.0)).first().isEqualTo("Since 1 Mar 2026 the predicted mass has kept steady.");
        assertThat(said(0.01, 9000.0))
                .last()
                .isEqualTo("At this rate it would take more than ten years to reach the target of 9000 g.");
    }

    @Test
    void aSlopeHasTwoDigits() {
        assertThat(said(17.77, 9000.0)).first().asString().endsWith("about 120 g a week.");
        assertThat(said(0.1234, 9000.0)).first().asString().endsWith("about 0.86 g a week.");
    }

    @Test
    void isToldInOuncesToo() {
        assertThat(said(283.49523125, 90000.0, new Figures(UnitSystem.OUNCE_INCH)))
                .first()
                .asString()
                .endsWith("about 70 oz a week.");
    }
}
