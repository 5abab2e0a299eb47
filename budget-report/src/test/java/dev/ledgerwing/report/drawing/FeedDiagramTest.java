package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.PowerBuilds;
import dev.ledgerwing.report.drawing.PowerView.ElementMark;
import dev.ledgerwing.report.drawing.PowerView.FeedMark;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import dev.ledgerwing.report.drawing.PowerView.RailMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import dev.ledgerwing.seed.SeedAirframe;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
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

    @ParameterizedTest
    @EnumSource(Layout.class)
    void keepsLabelsClearOnTheDemoFleetWholeAndWithEachThingFailed(Layout layout) {
        for (SeedAirframe airframe : SeedFleet.airframes()) {
            PowerStatement power = PowerStatement.of(airframe.last().build());
            Plates.assertLabelsAreClear(FeedDiagram.draw(view(power, PowerPictures.figures(power)), layout));
            for (FailureRow row : power.failures().rows()) {
                Plates.assertLabelsAreClear(FeedDiagram.draw(view(power, new FailedFigures(power, row)), layout));
            }
        }
    }

    private static PowerView view(PowerStatement power, FeedFigures figures) {
        return new PowerViews(power.build(), figures).view();
    }

    @Test
    void putsRailsThatAreFedFromRailsFurtherRight() {
        FeedLayers layers = new FeedLayers(view(PowerBuilds.twoPacks()));

        assertThat(layers.of("flight-pack")).isZero();
        assertThat(layers.of("motor")).isEqualTo(1);
        assertThat(layers.of("electronics")).isEqualTo(1);
        assertThat(layers.of("servos")).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void drawsEveryElementOnceAndNamesItForThePointerAndForTheKeyboard(Layout layout) {
        String svg = FeedDiagram.svg(view(PowerBuilds.twoPacks()), layout);

        assertThat(svg.split("<g class=\"element", -1)).hasSize(5 + 5 + 5 + 2 + 1);
        assertThat(svg)
                .contains("role=\"img\" aria-label=\"Main fuse, fuse: 40\u2009A\"")
                .contains("aria-label=\"Motor wire, wire: 12 AWG\"")
                .contains("&lt;script&gt;")
                .doesNotContain("<script");
    }

    @Test
    void saysOfALoopThatItIsOne() {
        for (Layout layout : Layout.values()) {
            assertThat(FeedDiagram.svg(view(PowerBuilds.tangled()), layout)).contains("no feed leads here");
        }
        assertThat(FeedDiagram.svg(view(PowerBuilds.tangled()), Layout.WIDE))
                .contains(">loop: back to</text>", ">Rail A</text>");
        assertThat(FeedDiagram.svg(view(PowerBuilds.tangled()), Layout.NARROW))
                .contains(">B to A, from Rail B, a loop</text>");
    }

    @Test
    void saysSoWhereNothingIsRecorded() {
        assertThat(FeedDiagram.svg(view(Builds.complete()), Layout.NARROW))
                .contains(">No source, no rail and no feed is recorded yet.</text>");
    }

    /** Every verdict has its word and a mark of its own shape, so that no colour is needed. */
    @ParameterizedTest
    @EnumSource(Layout.class)
    void tellsVerdictsApartWithoutColour(Layout layout) {
        String svg = FeedDiagram.svg(solved(PowerBuilds.sunny(), null), layout);

        assertThat(svg).contains(">holds</text>", ">tight</text>", ">breaks</text>", ">not known</text>");
        assertThat(svg).doesNotContain("fill=\"red", "stroke=\"red", "rgb(");
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void crossesOutWhatHasFailedAndSaysDarkOfWhatNothingReaches(Layout layout) {
        Drawn whole = FeedDiagram.draw(solved(PowerBuilds.twoPacks(), null), layout);
        Drawn failed = FeedDiagram.draw(solved(PowerBuilds.twoPacks(), "to-servos"), layout);

        assertThat(whole.strokes()).noneMatch(stroke -> stroke.pen() == Pen.CROSS || stroke.pen() == Pen.HATCH);
        assertThat(failed.strokes().stream().filter(stroke -> stroke.pen() == Pen.CROSS))
                .hasSize(2);
        assertThat(failed.strokes()).anyMatch(stroke -> stroke.pen() == Pen.HATCH);
        assertThat(failed.strokes()).anyMatch(stroke -> stroke.pen() == Pen.BUS_DARK);
        assertThat(failed.svg()).contains(">dark</text>", "failed: open");
    }

    @Test
    void showsWhatAFailureOfTheSolvedSupplyTakesDown() {
        PowerStatement power = PowerStatement.of(PowerBuilds.twoPacks());
        FailureRow row = power.failures().ofElement(new ElementAt("main", 1)).orElseThrow();

        PowerView view = view(power, new FailedFigures(power, row));

        assertThat(view.railsByCode().get("motor")).extracting(RailMark::state).isEqualTo(State.DARK);
        assertThat(view.railsByCode().get("electronics"))
                .extracting(RailMark::state)
                .isEqualTo(State.LIT);
        assertThat(view.feeds())
                .filteredOn(feed -> feed.state() == State.DARK)
                .extracting(FeedMark::code)
                .containsExactly("main");
        assertThat(view.feeds().get(0).elements())
                .extracting(ElementMark::state)
                .containsExactly(State.DARK, State.FAILED, State.DARK, State.DARK, State.DARK);
    }

    @Test
    void fillsTheBarUpToTheDemandAndMarksRatingAndReserve() {
        PowerStatement power = PowerStatement.of(PowerBuilds.twoPacks());
        LoadMark fuse = PowerPictures.figures(power)
                .load(PowerBuilds.twoPacks().power().feeds().get(0), 1);

        // the motor draws 12 A and peaks of 32 A through a fuse of 40 A
        assertThat(fuse.percent()).isCloseTo(80, within(1e-6));
        assertThat(fuse.reservePercent()).isEqualTo(20);
        assertThat(fuse.verdict()).isEqualTo(Verdict.HOLDS);
    }
}
