package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.RadioBuilds;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BanksChartTest {

    @Test
    void drawsAsBefore() throws IOException {
        Golden.assertMatches("banks-wide.svg", small(Layout.WIDE).svg());
        Golden.assertMatches("banks-narrow.svg", small(Layout.NARROW).svg());
    }

    private static Drawn small(Layout layout) {
        return draw(
                RadioBuilds.driven(), RadioBuilds.driven().outputs().boards().get(0), layout);
    }

    private static Drawn draw(Build build, dev.ledgerwing.core.build.Board board, Layout layout) {
        return BanksChart.draw(
                new BanksViews(dev.ledgerwing.core.outputs.OutputStatement.of(
                                build.withFittedBoard(new dev.ledgerwing.core.build.FittedBoard(board.code(), null))))
                        .view(),
                layout);
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void keepsLabelsClearAndCarriesNothingThatAStrictContentPolicyBlocks(Layout layout) {
        Stream<Build> fleet =
                SeedFleet.airframes().stream().map(airframe -> airframe.last().build());
        List<Drawn> drawings = Stream.concat(fleet, Stream.of(RadioBuilds.driven()))
                .flatMap(build -> build.outputs().boards().stream().map(board -> draw(build, board, layout)))
                .toList();

        assertThat(drawings).hasSizeGreaterThan(4).allSatisfy(drawn -> {
            Plates.assertLabelsAreClear(drawn);
            assertThat(drawn.svg())
                    .doesNotContain("style=", "<style", " id=", "url(", "href", "<script", "<right>", "NaN");
        });
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void drawsEveryOutputOnceAndTheFreeOnesQuietly(Layout layout) {
        Drawn drawn = small(layout);

        // 8 outputs: 1, 2 and 5 are taken
        assertThat(drawn.strokes().stream().filter(stroke -> stroke.pen() == Pen.PIN))
                .hasSize(4 * 3);
        assertThat(drawn.strokes().stream().filter(stroke -> stroke.pen() == Pen.PIN_FREE))
                .hasSize(4 * 5);
        assertThat(drawn.svg().split(">free<", -1)).hasSize(6);
    }

    @Test
    void forksALeadWithSeveralPiecesAndSaysHowMany() {
        assertThat(small(Layout.WIDE).svg()).contains(">2 pieces on a Y-lead<", "2 × Spar, carbon tube 14 mm");
    }

    @Test
    void marksAnOutputUsedTwiceWithWordAndShapeAndKeepsBothInSight() {
        String svg = small(Layout.WIDE).svg();

        assertThat(svg).contains(">Flap, left<", ">Flap, &lt;right&gt;<", "kind of pulse not known");
        assertThat(svg.split(">used twice<", -1)).hasSize(3);
        assertThat(svg).contains(">breaks<");
    }

    @Test
    void keepsInSightWhatIsOnNoOutputOfTheBoard() {
        assertThat(small(Layout.NARROW).svg())
                .contains(
                        ">On no output of this board<",
                        ">Off the board<",
                        "output 99 is not on",
                        "nothing hangs on it yet");
    }

    @Test
    void saysSoWhereNoBoardIsChosen() {
        assertThat(OutputPictures.banks(OutputStatement.of(Builds.complete())).narrow())
                .contains(">No flight controller is chosen yet.<");
    }
}
