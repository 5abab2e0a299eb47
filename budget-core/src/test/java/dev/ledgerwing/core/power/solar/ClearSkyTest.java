package dev.ledgerwing.core.power.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClearSkyTest {

    /** Published with the tests of the open-source pvlib-python for Kasten and Young 1989; 30 to 75 degrees by derivation. */
    @ParameterizedTest
    @CsvSource({"0, 1.000", "30, 1.154", "60, 1.994", "70, 2.903", "75, 3.813", "80, 5.586", "89.9, 36.467"})
    void countsTheAirThatLightComesThrough(double zenithDeg, double published) {
        assertThat(AirMass.relative(zenithDeg)).isCloseTo(published, within(0.0006));
    }

    /** Published with the same tests: at 900 hPa. */
    @ParameterizedTest
    @CsvSource({"40, 35.529", "2, 1.776", "0.999, 0.887"})
    void countsLessAirWhereThePressureIsLower(double relative, double published) {
        assertThat(AirMass.absolute(relative, 900)).isCloseTo(published, within(0.001));
    }

    /** Published with the same tests. */
    @ParameterizedTest
    @CsvSource({"0, 1013.24999", "1000, 898.74750", "8000, 356.00496", "-100, 1025.32073"})
    void knowsThePressureByHeight(double elevationM, double published) {
        assertThat(AirPressure.atHPa(elevationM)).isCloseTo(published, within(0.00002));
    }

    /** Standard atmosphere above 11 km, from memory: 55.3 hPa at 20 km. */
    @Test
    void knowsThePressureAboveTheWeather() {
        assertThat(AirPressure.atHPa(20_000)).isCloseTo(55.3, withPercentage(1));
        assertThat(AirPressure.atHPa(11_000.001)).isCloseTo(AirPressure.atHPa(10_999.999), within(0.001));
    }

    /** NREL's spreadsheet BIRD_08_16_2012, day 1. */
    @Test
    void knowsTheLightOutsideTheAir() {
        assertThat(ClearSky.outsideTheAir(1)).isCloseTo(1414.91335, within(0.00001));
    }

    /** NREL's spreadsheet BIRD_08_16_2012: 840 hPa and the inputs of {@link Atmosphere#STANDARD}, air mass after Kasten 1966. */
    @ParameterizedTest
    @CsvSource({
        "80.20294173, 5.686327629, 0.735106393, 0.943518656, 0.981172469, 0.847880981, 0.623955329",
        "63.52421726, 2.232516123, 0.860924449, 0.971083226, 0.985205107, 0.874506452, 0.817674024"
    })
    void letsThroughThePublishedShares(
            double zenithDeg, double airMass, double rayleigh, double ozone, double gases, double water, double haze) {
        ClearSky sky = new ClearSky(zenithDeg, airMass, 840, Atmosphere.STANDARD);

        assertThat(sky.rayleigh()).isCloseTo(rayleigh, withPercentage(0.01));
        assertThat(sky.ozone()).isCloseTo(ozone, withPercentage(0.01));
        assertThat(sky.mixedGases()).isCloseTo(gases, withPercentage(0.01));
        assertThat(sky.water()).isCloseTo(water, withPercentage(0.01));
        assertThat(sky.haze()).isCloseTo(haze, withPercentage(0.01));
    }

    /** The same spreadsheet, hours 9 and 12. */
    @ParameterizedTest
    @CsvSource({
        "80.20294173, 5.686327629, 492.1883322, 135.7051581, 51.95435684",
        "63.52421726, 2.232516123, 805.171223, 450.215507, 91.25379149"
    })
    void shinesAsPublished(double zenithDeg, double airMass, double direct, double global, double diffuse) {
        Irradiance light = new ClearSky(zenithDeg, airMass, 840, Atmosphere.STANDARD).under(1414.91335);

        assertThat(light.directNormal()).isCloseTo(direct, withPercentage(0.01));
        assertThat(light.global()).isCloseTo(global, withPercentage(0.01));
        assertThat(light.diffuse()).isCloseTo(diffuse, withPercentage(0.01));
    }

    /**
     * Haurwitz 1945 (SAND2012-2389): 1098 cos z exp(-0.059 / cos z), published 135.74, 487.89, 778.77 and 1035.09 W/m2 at 10, 30, 50
     * and 90 degrees of elevation. A rule of three constants for any sky that is clear; the two agree within a tenth.
     */
    @ParameterizedTest
    @CsvSource({"10, 135.741748091813", "30, 487.894132885425", "50, 778.766689344363", "90, 1035.09203253450"})
    void isNearAnotherRuleForAClearSky(double elevationDeg, double published) {
        double cosZenith = Math.sin(Math.toRadians(elevationDeg));
        assertThat(1098 * cosZenith * Math.exp(-0.059 / cosZenith)).isCloseTo(published, within(1e-9));

        Irradiance light = ClearSky.light(new SunPosition(90 - elevationDeg, 180), AirPressure.SEA_LEVEL_HPA, 80);
        assertThat(light.global()).isCloseTo(published, withPercentage(10));
    }

    @Test
    void isDarkOnceTheSunIsDown() {
        assertThat(ClearSky.light(new SunPosition(90, 180), 1013, 1)).isEqualTo(Irradiance.DARK);
        assertThat(ClearSky.light(new SunPosition(110, 180), 1013, 1)).isEqualTo(Irradiance.DARK);
    }

    /** The fitted expressions end some degrees above the horizon; beyond them the light must still fade, at every height. */
    @Test
    void fadesAllTheWayToTheHorizon() {
        for (double pressureHPa : new double[] {1013, 700, 300, 50}) {
            double[] direct = IntStream.range(0, 900)
                    .mapToDouble(i -> ClearSky.light(new SunPosition(i / 10.0, 180), pressureHPa, 80)
                            .directNormal())
                    .toArray();

            assertThat(DoubleStream.of(direct).allMatch(Double::isFinite)).isTrue();
            assertThat(IntStream.range(1, 900).filter(i -> direct[i] >= direct[i - 1]))
                    .as("tenths of a degree where it grows again, %s hPa", pressureHPa)
                    .isEmpty();
        }
    }

    /** Seen at a hundredth of a degree above the horizon, where the fit of the haze breaks down. */
    @Test
    void neverTakesLightAway() {
        for (double elevationDeg : new double[] {0.0001, 0.01, 0.02, 0.1, 1}) {
            for (double pressureHPa : new double[] {1074, 1013, 300, 11}) {
                Irradiance light = ClearSky.light(new SunPosition(90 - elevationDeg, 180), pressureHPa, 80);

                assertThat(light.directNormal()).isNotNegative();
                assertThat(light.diffuse()).as("%s degrees", elevationDeg).isNotNegative();
                assertThat(light.global()).isGreaterThanOrEqualTo(light.diffuse());
            }
        }
    }
}
