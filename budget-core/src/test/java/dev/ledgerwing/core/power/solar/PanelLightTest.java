package dev.ledgerwing.core.power.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelLightTest {

    private static final Irradiance CLEAR = new Irradiance(800, 100, 600);

    /** Published with the tests of the open-source pvlib-python. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0, 0, 1", "30, 180, 30, 180, 1", "30, 180, 150, 0, -1", "90, 0, 30, 60, 0.25"})
    void meetsTheSunAtThePublishedAngle(
            double tiltDeg, double facesDeg, double zenithDeg, double azimuthDeg, double cosine) {
        PanelLight light = new PanelLight(tiltDeg, new SunPosition(zenithDeg, azimuthDeg), CLEAR);

        assertThat(light.cosineFacing(facesDeg)).isCloseTo(cosine, within(1e-9));
    }

    /** Published with the same tests: sky 100 W/m2 on 40 degrees, ground below 900 W/m2 that throws back a quarter. */
    @Test
    void takesInThePublishedLightOfSkyAndGround() {
        double cosTilt = Math.cos(Math.toRadians(40));

        assertThat(PanelLight.skyOn(100, cosTilt)).isCloseTo(88.30222215594891, within(1e-9));
        assertThat(PanelLight.groundOn(900 * 0.25, cosTilt)).isCloseTo(26.32000014911496, within(1e-9));
    }

    @Test
    void takesNoBeamFromBehind() {
        PanelLight light = new PanelLight(30, new SunPosition(80, 0), new Irradiance(800, 0, 0));

        assertThat(light.cosineFacing(180)).isNegative();
        assertThat(light.facing(180)).isZero();
    }

    /** Against a sum over 3600 headings, 500 seeded suns and tilts, also where the sun is behind the cells for a part of the circle. */
    @Test
    void averagesAllHeadingsAsASumOverThemDoes() {
        Random random = new Random(20260621);
        for (int i = 0; i < 500; i++) {
            SunPosition sun = new SunPosition(random.nextDouble() * 90, random.nextDouble() * 360);
            PanelLight light = new PanelLight(random.nextDouble() * 90, sun, CLEAR);
            double sum = IntStream.range(0, 3600)
                    .mapToDouble(heading -> light.facing(heading / 10.0))
                    .average()
                    .orElseThrow();

            assertThat(light.circling()).as("seed 20260621, %s", light).isCloseTo(sum, within(0.01));
        }
    }

    @Test
    void makesNothingOfTheHeadingOnLevelCells() {
        PanelLight light = new PanelLight(0, new SunPosition(40, 123), CLEAR);

        assertThat(light.circling()).isCloseTo(light.facing(77), within(1e-9));
        assertThat(light.circling()).isCloseTo(800 * Math.cos(Math.toRadians(40)) + 100, within(1e-9));
    }
}
