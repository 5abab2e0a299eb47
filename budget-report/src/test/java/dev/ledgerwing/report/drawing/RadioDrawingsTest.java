package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.RadioBuilds;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RadioDrawingsTest {

    @Test
    void drawsAsBefore() throws IOException {
        for (Layout layout : Layout.values()) {
            String ending = layout.isWide() ? "-wide.svg" : "-narrow.svg";
            Golden.assertMatches(
                    "demands" + ending, grid(RadioBuilds.shared(), layout).svg());
            Golden.assertMatches(
                    "transmitter" + ending,
                    transmitter(RadioBuilds.shared(), layout).svg());
        }
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void keepsLabelsClearAndCarriesNothingThatAStrictContentPolicyBlocks(Layout layout) {
        drawings(layout).forEach(drawn -> {
            Plates.assertLabelsAreClear(drawn);
            assertThat(drawn.svg())
                    .startsWith("<svg ")
                    .endsWith("</svg>")
                    .doesNotContain("style=", "<style", " id=", "url(", "href", "<script", "<b>", "NaN", "Infinity");
        });
    }

    private static Stream<Drawn> drawings(Layout layout) {
        Stream<Build> fleet =
                SeedFleet.airframes().stream().map(airframe -> airframe.last().build());
        return Stream.concat(fleet, Stream.of(RadioBuilds.shared(), RadioBuilds.crowded(), Builds.complete()))
                .flatMap(build -> Stream.of(
                        grid(build, layout),
                        bareGrid(build, layout),
                        transmitter(build, layout),
                        faulty(build, layout)));
    }

    private static Drawn grid(Build build, Layout layout) {
        return DemandChart.draw(new DemandViews(build, build.radio().channels()).view(), layout);
    }

    private static Drawn bareGrid(Build build, Layout layout) {
        return DemandChart.draw(new DemandViews(build, List.of()).view(), layout);
    }

    private static Drawn transmitter(Build build, Layout layout) {
        return TransmitterChart.draw(views(build, Map.of()).view(List.of()), layout);
    }

    private static Drawn faulty(Build build, Layout layout) {
        Map<Integer, String> faults =
                Map.of(4, "cannot be: “Lamp” crosses “on” on its way, and that does harm in Approach");
        return TransmitterChart.draw(
                views(build, faults).view(List.of("The channels do not carry what is asked of them.")), layout);
    }

    private static TransmitterViews views(Build build, Map<Integer, String> faults) {
        return new TransmitterViews(build, build.radio().channels(), faults);
    }

    @Test
    void setsInABoxWhatMustBeSelectableAndPlainWhatDoesNoHarm() {
        Drawn drawn = grid(RadioBuilds.shared(), Layout.WIDE);

        // must: by hand; by hand, level, follows; down, up, down, up; off, on; on; and one in the key
        assertThat(drawn.strokes().stream().filter(stroke -> stroke.pen() == Pen.DEMAND))
                .hasSize(4 * (1 + 3 + 4 + 2 + 1 + 1));
        assertThat(drawn.labels().stream().map(Drawn.Label::text)).contains("no other", "nothing asked");
    }

    @Test
    void tellsTheFourMarksOfAPhoneApartByShape() {
        String svg = grid(RadioBuilds.shared(), Layout.NARROW).svg();

        assertThat(svg)
                .contains(">must be selectable then<", ">does no harm then<", ">must not be then<", ">nothing asked<");
        assertThat(grid(RadioBuilds.shared(), Layout.NARROW).strokes().stream().filter(s -> s.pen() == Pen.TRACK))
                .as("crosses: two states of “Behaviour” and “Wheels” never, “Charging” once, and the key")
                .hasSize(2 * (1 + 1 + 1 + 1));
    }

    @Test
    void putsFunctionsOfOneChannelTogetherAndNamesThoseOnNone() {
        DemandView view = new DemandViews(
                        RadioBuilds.shared(), RadioBuilds.shared().radio().channels())
                .view();

        assertThat(view.groups())
                .extracting(DemandView.Group::heading)
                .containsExactly("Channel 3", "Channel 4, shared by 2", "Not by radio");
        assertThat(view.notes()).containsExactly("Proportional, so without states to ask for: Rudder; Throttle.");
        assertThat(new DemandViews(RadioBuilds.shared(), List.of())
                        .view()
                        .groups()
                        .get(0)
                        .rows())
                .extracting(DemandView.Row::name)
                .containsExactly("Behaviour", "Wheels", "Charging");
    }

    @Test
    void saysSoWhereNothingIsRecorded() {
        assertThat(grid(Builds.complete(), Layout.NARROW).svg())
                .contains(">No switched function is recorded yet.<", ">No phase is recorded yet: ");
        assertThat(transmitter(Builds.complete(), Layout.WIDE).svg())
                .contains("how many channels it has is not known.", "No channel carries anything yet.");
    }

    @Test
    void drawsAStopForEveryPositionAndWhatItCommands() {
        Drawn drawn = transmitter(RadioBuilds.shared(), Layout.WIDE);

        assertThat(drawn.svg())
                .contains(">Channel 4, shared by 2<", ">Wheels: down<", ">Charging: off<", ">Wheels: up<")
                .contains(">Channel 3, pinned<", ">signal lost: as at 1<", ">signal lost: low end<", ">moves nothing<")
                .contains("the receiver goes to its presets.");
    }

    @Test
    void numbersThePlacesOfTwoMixedSwitchesByBoth() {
        String svg = transmitter(RadioBuilds.crowded(), Layout.NARROW).svg();

        assertThat(svg).contains(">1·1<", ">1·4<", ">2·1<", ">3·4<").doesNotContain(">4·1<");
    }

    @Test
    void neverHidesAStateThatIsNotSaidNorAChannelThatNothingMoves() {
        String svg = transmitter(RadioBuilds.crowded(), Layout.WIDE).svg();

        assertThat(svg).contains(">not said<", ">No control yet<", ">carries nothing<");
    }

    @Test
    void marksAChannelThatIsWrongWithWordAndShape() {
        String svg = faulty(RadioBuilds.shared(), Layout.WIDE).svg();

        assertThat(svg).contains(">breaks<", ">The channels do not carry what is asked of them.<");
        assertThat(svg.split("class=\"shape\"", -1)).hasSize(2);
    }

    @Test
    void drawsChannelsThatAreOnlyProposedAsWell() {
        Build bare = RadioBuilds.shared().withChannels(List.of());

        assertThat(RadioPictures.transmitter(bare, RadioBuilds.shared().radio().channels()))
                .isEqualTo(RadioPictures.transmitter(
                        RadioBuilds.shared(), RadioBuilds.shared().radio().channels()));
        assertThat(bare.radio()).isNotEqualTo(Radio.NONE);
    }
}
