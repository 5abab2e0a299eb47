package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.report.Builds;
import org.junit.jupiter.api.Test;

class MassBarTest {

    @Test
    void drawsMassesToScale() {
        Build build = Builds.withTarget(Builds.complete(), 1500);

        MassBar bar = MassBar.of(MassForecast.of(build), 2000);

        assertThat(bar.basic()).isEqualTo("494.1"); // 988.2 g of 2000 g
        assertThat(bar.target()).isEqualTo("750.0");
    }

    @Test
    void leavesRoomForTheTargetAndForTheForecast() {
        MassForecast broken = MassForecast.of(Builds.withTarget(Builds.complete(), 100));
        MassForecast roomy = MassForecast.of(Builds.withTarget(Builds.complete(), 100_000));

        assertThat(Double.parseDouble(String.valueOf(MassBar.of(broken).bandHigh())))
                .isBetween(900.0, 1000.0);
        assertThat(Double.parseDouble(String.valueOf(MassBar.of(roomy).target())))
                .isBetween(900.0, 1000.0);
    }

    @Test
    void drawsNoForecastWhileAMassIsMissing() {
        assertThat(MassBar.of(MassForecast.of(Builds.skiff())).bandLow()).isNull();
    }

    @Test
    void staysWithinItselfWithNothingAboard() {
        Build blank = Build.blank(
                Builds.skiff().airframe(), Builds.withoutTarget(Builds.skiff()).budget());

        assertThat(MassBar.of(MassForecast.of(blank))).isEqualTo(new MassBar("0.0", "0.0", null, null, null));
    }
}
