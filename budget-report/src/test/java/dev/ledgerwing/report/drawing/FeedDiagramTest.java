package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.PowerBuilds;
import java.io.IOException;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FeedDiagramTest {

    @Test
    void drawsAsBefore() throws IOException {
        PowerView view = view(PowerBuilds.twoPacks());
        Golden.assertMatches("feeds-recorded-wide.svg", FeedDiagram.svg(view, Layout.WIDE));
        Golden.assertMatches("feeds-recorded-narrow.svg", FeedDiagram.svg(view, Layout.NARROW));
    }

    @Test
    void drawsLoadsAsBefore() throws IOException {
        PowerView view = solved(PowerBuilds.twoPacks(), null);
        Golden.assertMatches("feeds-wide.svg", FeedDiagram.svg(view, Layout.WIDE));
        Golden.assertMatches("feeds-narrow.svg", FeedDiagram.svg(view, Layout.NARROW));
    }

    @Test
    void drawsAFailureAsBefore() throws IOException {
        PowerView view = solved(PowerBuilds.twoPacks(), "to-servos");
        Golden.assertMatches("feeds-failed-wide.svg", FeedDiagram.svg(view, Layout.WIDE));
        Golden.assertMatches("feeds-failed-narrow.svg", FeedDiagram.svg(view, Layout.NARROW));
    }

    private static PowerView solved(Build build, @Nullable String failed) {
        return new PowerViews(build, new SampleFigures(build, failed)).view();
    }

    static Stream<Arguments> drawings() {
        return Stream.of(Layout.values())
                .flatMap(layout -> Stream.of(
                                PowerBuilds.twoPacks(),
                                PowerBuilds.twoPacksUnrated(),
                                PowerBuilds.tangled(),
                                PowerBuilds.sunny(),
                                PowerBuilds.large(6, 7, 0),
                                PowerBuilds.large(3, 12, 3),
                                PowerBuilds.large(2, 2, 9),
                                Builds.complete())
                        .flatMap(build -> Stream.of(
                                Arguments.of(view(build), layout),
                                Arguments.of(solved(build, null), layout),
                                Arguments.of(solved(build, "to-servos"), layout))));
    }

    private static PowerView view(Build build) {
        return new PowerViews(build, new FeedFigures(build)).view();
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void keepsLabelsClearOfEachOtherAndOfEveryLineAndInsideTheDrawing(PowerView view, Layout layout) {
        Plates.assertLabelsAreClear(FeedDiagram.draw(view, layout));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void carriesNothingThatAStrictContentPolicyBlocksAndNoId(PowerView view, Layout layout) {
        assertThat(FeedDiagram.svg(view, layout))
                .startsWith("<svg ")
                .endsWith("</svg>")
                .doesNotContain("style=", "<style", " id=", "url(", "href", "<script", "NaN", "Infinity")
                .isEqualTo(FeedDiagram.svg(view, layout));
    }
}
