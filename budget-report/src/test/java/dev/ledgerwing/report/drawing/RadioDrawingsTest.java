package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.seed.SeedAirframe;
import dev.ledgerwing.seed.SeedFleet;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RadioDrawingsTest {

    @ParameterizedTest
    @EnumSource(Layout.class)
    void keepsLabelsClearOnTheDemoFleet(Layout layout) {
        for (SeedAirframe airframe : SeedFleet.airframes()) {
            Build build = airframe.last().build();
            Plates.assertLabelsAreClear(
                    DemandChart.draw(new DemandViews(build, build.radio().channels()).view(), layout));
            Plates.assertLabelsAreClear(TransmitterChart.draw(
                    new TransmitterViews(build, build.radio().channels(), Map.of()).view(java.util.List.of()), layout));
            Plates.assertLabelsAreClear(BanksChart.draw(
                    new BanksViews(
                                    build,
                                    build.outputs().boards().get(0),
                                    build.outputs().assignments())
                            .view(),
                    layout));
        }
        assertThat(SeedFleet.airframes()).isNotEmpty();
    }
}
