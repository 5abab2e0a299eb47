package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.seed.SeedAirframe;
import dev.ledgerwing.seed.SeedFleet;
import dev.ledgerwing.seed.SeedRevision;
import java.io.IOException;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlanformDrawingTest {

    @Test
    void drawsAsBefore() throws IOException {
        Golden.assertMatches("planform-wide.svg", PlanformDrawing.svg(Views.skiff(), Figures.METRIC, Layout.WIDE));
        Golden.assertMatches("planform-narrow.svg", PlanformDrawing.svg(Views.skiff(), Figures.METRIC, Layout.NARROW));
    }

    @Test
    void drawsAPreviewAsBefore() throws IOException {
        Golden.assertMatches(
                "planform-preview.svg",
                PlanformDrawing.svg(Views.skiff(), Views.skiffCorrected(), Figures.METRIC, Layout.WIDE));
    }

    @Test
    void drawsTheStripAsBefore() throws IOException {
        Golden.assertMatches("strip-wide.svg", MassStrip.svg(Views.skiff(), Figures.METRIC, Layout.WIDE));
        Golden.assertMatches("strip-narrow.svg", MassStrip.svg(Views.skiff(), Figures.METRIC, Layout.NARROW));
    }

    static Stream<Arguments> drawings() {
        return Stream.of(Layout.values())
                .flatMap(layout -> Stream.of(Views.skiff(), Views.kit(), Views.square(), Views.blank())
                        .flatMap(view -> Stream.of(UnitSystem.values())
                                .map(units -> Arguments.of(view, new Figures(units), layout))));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void keepsLabelsClearOfEachOtherAndOfEveryLineAndInsideTheDrawing(BalanceView view, Figures units, Layout layout) {
        Plates.assertLabelsAreClear(PlanformDrawing.draw(null, view, units, layout));
        Plates.assertLabelsAreClear(PlanformDrawing.draw(Views.skiffCorrected(), view, units, layout));
        Plates.assertLabelsAreClear(MassStrip.draw(view, units, layout));
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void keepsLabelsClearOnEveryRevisionOfTheDemoFleet(Layout layout) {
        for (SeedAirframe airframe : SeedFleet.airframes()) {
            for (SeedRevision revision : airframe.revisions()) {
                BalanceView view =
                        new BalanceViews(BalanceStatement.of(revision.build()), loadCase -> Verdict.UNKNOWN).view();
                for (UnitSystem units : UnitSystem.values()) {
                    Plates.assertLabelsAreClear(PlanformDrawing.draw(null, view, new Figures(units), layout));
                    Plates.assertLabelsAreClear(MassStrip.draw(view, new Figures(units), layout));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void carriesNothingThatAStrictContentPolicyBlocksAndNoId(BalanceView view, Figures units, Layout layout) {
        for (String svg : List.of(PlanformDrawing.svg(view, units, layout), MassStrip.svg(view, units, layout))) {
            assertThat(svg)
                    .startsWith("<svg ")
                    .endsWith("</svg>")
                    .doesNotContain("style=", "<style", " id=", "url(", "href", "<script", "NaN", "Infinity");
        }
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void drawsASquareWingSquare(Layout layout) {
        List<Spot> edges = PlanformDrawing.draw(null, Views.square(), Figures.METRIC, layout).strokes().stream()
                .filter(stroke -> stroke.pen() == Pen.OUTLINE)
                .flatMap(stroke -> Stream.of(stroke.from(), stroke.to()))
                .toList();

        double across = extent(edges, Spot::x);
        double down = extent(edges, Spot::y);
        assertThat(across).isGreaterThan(100).isCloseTo(down, within(1e-9));
    }

    private static double extent(List<Spot> spots, ToDoubleFunction<Spot> axis) {
        DoubleSummaryStatistics places = spots.stream().mapToDouble(axis).summaryStatistics();
        return places.getMax() - places.getMin();
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void drawsStationsOfTheEnlargedBandToScale(Layout layout) {
        List<Stroke> limits = PlanformDrawing.draw(null, Views.kit(), Figures.METRIC, layout).strokes().stream()
                .filter(stroke -> stroke.pen() == Pen.EDGE)
                .toList();
        BandView band = Objects.requireNonNull(Views.kit().band());
        double perMm = new BandDetail(new Board(new Plate(layout), Views.kit(), null, Figures.METRIC, layout)).perMm();

        assertThat(limits.stream()
                        .map(stroke -> stroke.from().x())
                        .distinct()
                        .sorted()
                        .toList())
                .hasSize(2)
                .satisfies(places -> assertThat(places.get(1) - places.get(0))
                        .isCloseTo((band.aftXMm() - band.forwardXMm()) * perMm, within(1e-6)));
    }

    @Test
    void namesEveryMarkForThePointerAndForTheKeyboard() {
        String svg = PlanformDrawing.svg(Views.skiff(), Figures.METRIC, Layout.WIDE);

        assertThat(svg)
                .contains(
                        "<g class=\"case tight\" tabindex=\"0\" role=\"img\" aria-label=\"Survey, everything aboard, gear up: "
                                + "basic 37.3\u2009%, 638.4\u2009mm ± 2.8; predicted 38.1\u2009%, 640.7\u2009mm ± 3.8\"><title>Survey")
                .contains("aria-label=\"Neutral point, estimate: 45.3\u2009%, 662\u2009mm\"")
                .contains("Survey with the large pack &amp; the &lt;bottle&gt;")
                .doesNotContain("<bottle>");
        assertThat(MassStrip.svg(Views.skiff(), Figures.METRIC, Layout.WIDE))
                .contains("aria-label=\"Flight pack, 6 cells in line, 1134\u2009g at 322\u2009mm\"");
    }

    @Test
    void saysThatTheNeutralPointIsAnEstimate() {
        assertThat(PlanformDrawing.svg(Views.skiff(), Figures.METRIC, Layout.WIDE))
                .contains(">Neutral point, estimate</text>", ">neutral point 45.3\u2009% MAC, estimate</text>");
    }

    @Test
    void saysThatABandIsAnEstimateWhereNoneIsDeclared() {
        assertThat(PlanformDrawing.svg(Views.square(), Figures.METRIC, Layout.WIDE))
                .contains(
                        ">forward limit</text>",
                        ">estimate</text>",
                        ">aft limit 30.0\u2009% MAC, 300\u2009mm, estimate</text>");
        assertThat(PlanformDrawing.svg(Views.kit(), Figures.METRIC, Layout.WIDE))
                .doesNotContain("estimate");
    }

    @Test
    void listsWhatItCannotDraw() {
        assertThat(MassStrip.svg(Views.skiff(), Figures.METRIC, Layout.WIDE))
                .contains(">Not drawn, station or mass not known: Glue and filler; Paint.</text>");
    }

    @Test
    void drawsTheHeaviestOfVeryManyLinesAndSaysWhatItLeavesOut() {
        BalanceView many = Views.withParts(10_000);

        Drawn drawn = MassStrip.draw(many, Figures.METRIC, Layout.WIDE);

        assertThat(drawn.svg()).contains(">The 9700 lightest lines, ", " together, are not drawn.</text>");
        assertThat(drawn.svg().split("<g class=\"part\"", -1)).hasSize(301);
    }

    @Test
    void namesNoCgOfTheWholeWhileSomethingIsNotPlaced() {
        assertThat(MassStrip.svg(Views.unplaced(), Figures.METRIC, Layout.WIDE))
                .contains(">CG of the rest 600\u2009mm</text>");
        assertThat(PlanformDrawing.svg(Views.unplaced(), Figures.METRIC, Layout.WIDE))
                .contains("class=\"incomplete\"", ">All up, 3 not placed</text>");
    }

    @Test
    void putsEachMassOverItsStationWithAnAreaInProportion() {
        List<Load> loads = Stack.of(Views.skiff().placed().toList(), new Scale(0, 0, 0.4), 30);

        assertThat(loads).hasSize(16).allSatisfy(load -> {
            double grams = load.part().gramsOrZero();
            assertThat(load.centre().x()).isCloseTo(0.4 * load.part().xMmOrZero(), within(1e-9));
            assertThat(load.radius() * load.radius()).isCloseTo(900 * grams / 1240, within(1e-6));
            assertThat(loads).filteredOn(other -> !other.equals(load)).allMatch(other -> load.isClearOf(other, 0.5));
        });
    }

    @Test
    void showsBeforeAndAfterOfAChangeWithAnArrow() {
        Drawn drawn = PlanformDrawing.draw(Views.skiff(), Views.skiffCorrected(), Figures.METRIC, Layout.WIDE);

        assertThat(drawn.svg()).contains("class=\"before\"", "class=\"arrow\"", ">37.3\u2009% → 34.3\u2009%</text>");
    }
}
