package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.drawing.DayView.Moment;
import dev.ledgerwing.report.drawing.DayView.SunEvent;
import dev.ledgerwing.report.drawing.EnergyView.PhaseBar;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PowerChartsTest {

    private static final EnergyView ENERGY = new EnergyView(
            "Skiff",
            List.of(
                    "Motor",
                    "Avionics, 5 V",
                    "Servos, 6 V, with a <name> of very many words that no phone has room for",
                    "lost"),
            List.of(
                    new PhaseBar("Power on, 3\u2009min", List.of(0.0, 0.2, 0.1, 0.02)),
                    new PhaseBar("Climb, 2\u2009min", List.of(20.0, 0.1, 0.4, 0.6)),
                    new PhaseBar("Cruise, 41\u2009min", List.of(88.0, 2.6, 4.1, 2.2)),
                    new PhaseBar("A phase with a very long name of which nobody knows how long it lasts", List.of())),
            List.of("To be known first: how long “A phase” lasts."));

    @Test
    void drawsEnergyAsBefore() throws IOException {
        Golden.assertMatches("energy-wide.svg", EnergyChart.svg(ENERGY, Layout.WIDE));
        Golden.assertMatches("energy-narrow.svg", EnergyChart.svg(ENERGY, Layout.NARROW));
    }

    @Test
    void drawsADayAsBefore() throws IOException {
        Golden.assertMatches("day-wide.svg", DayChart.svg(day(true), Layout.WIDE));
        Golden.assertMatches("day-narrow.svg", DayChart.svg(day(true), Layout.NARROW));
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void keepsLabelsClearAndCarriesNothingThatAStrictContentPolicyBlocks(Layout layout) {
        for (Drawn drawn : List.of(
                EnergyChart.draw(ENERGY, layout),
                EnergyChart.draw(new EnergyView("Blank", List.of(), List.of(), List.of()), layout),
                DayChart.draw(day(true), layout),
                DayChart.draw(day(false), layout))) {
            Plates.assertLabelsAreClear(drawn);
            assertThat(drawn.svg())
                    .doesNotContain("style=", "<style", " id=", "url(", "href", "<script", "NaN", "Infinity", "<name>");
        }
    }

    @Test
    void stacksEachPartInProportionToItsEnergy() {
        Drawn drawn = EnergyChart.draw(ENERGY, Layout.WIDE);
        List<Stroke> uprights = drawn.strokes().stream()
                .filter(stroke -> stroke.pen() == Pen.STACK
                        && stroke.from().x() == stroke.to().x())
                .filter(stroke -> Math.abs(stroke.from().y() - stroke.to().y()) > 15)
                .toList();
        double right =
                uprights.stream().mapToDouble(stroke -> stroke.from().x()).max().orElseThrow();
        double perWh = (right - Board.EDGE) / ENERGY.longestWh();

        assertThat(right).isCloseTo(Layout.WIDE.width() - Board.EDGE, within(0.01));
        assertThat(uprights.stream().mapToDouble(stroke -> stroke.from().x()))
                .anyMatch(x -> Math.abs(x - Board.EDGE - 88 * perWh) < 0.01)
                .anyMatch(x -> Math.abs(x - Board.EDGE - 20 * perWh) < 0.01);
    }

    @Test
    void neverDrawsABarOfWhatIsNotKnown() {
        assertThat(EnergyChart.svg(ENERGY, Layout.WIDE))
                .contains("knows how long it lasts: not known\"", ">not known</text>");
    }

    @Test
    void tellsTheCurvesOfADayApartWithoutColour() {
        List<Pen> pens = DayChart.draw(day(true), Layout.WIDE).strokes().stream()
                .map(Stroke::pen)
                .distinct()
                .toList();

        assertThat(pens).contains(Pen.CURVE, Pen.CURVE_DASHED, Pen.CURVE_DOTTED, Pen.FLOOR);
    }

    @Test
    void drawsNoCurveOfWhatIsNotKnown() {
        Drawn known = DayChart.draw(day(true), Layout.WIDE);
        Drawn unknown = DayChart.draw(day(false), Layout.WIDE);

        assertThat(longCurves(known)).isGreaterThan(100);
        assertThat(longCurves(unknown)).isLessThan(5);
        assertThat(unknown.svg()).contains("To be known first: the capacity of the packs.");
    }

    private static long longCurves(Drawn drawn) {
        return drawn.strokes().stream()
                .filter(stroke -> stroke.pen() == Pen.CURVE)
                .count();
    }

    private static DayView day(boolean known) {
        List<Moment> moments = IntStream.rangeClosed(0, 96)
                .mapToObj(quarter -> {
                    double hour = 6 + quarter / 4.0;
                    double sun = Math.max(0, Math.sin((hour - 5) / 16 * Math.PI)) * (hour < 21 ? 27 : 0);
                    return known
                            ? new Moment(hour, sun, 12.0, 60 + 30 * Math.sin(hour / 4))
                            : new Moment(hour, null, null, null);
                })
                .toList();
        return new DayView(
                "Skiff",
                "21 Jun 2026, Bog edge",
                moments,
                List.of(new SunEvent(29.1, "sunrise 5:06"), new SunEvent(21.9, "sunset 21:54")),
                known ? 20.0 : null,
                known ? List.of() : List.of("To be known first: the capacity of the packs."));
    }
}
