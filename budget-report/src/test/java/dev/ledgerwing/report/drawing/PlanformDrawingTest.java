package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.report.Golden;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
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
                .flatMap(layout -> Stream.of(Views.skiff(), Views.kit(), Views.blank())
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
    @MethodSource("drawings")
    void carriesNothingThatAStrictContentPolicyBlocksAndNoId(BalanceView view, Figures units, Layout layout) {
        for (String svg : List.of(PlanformDrawing.svg(view, units, layout), MassStrip.svg(view, units, layout))) {
            assertThat(svg)
                    .startsWith("<svg ")
                    .endsWith("</svg>")
                    .doesNotContain("style=", "<style", " id=", "url(", "href", "<script", "NaN", "Infinity");
        }
    }
}
