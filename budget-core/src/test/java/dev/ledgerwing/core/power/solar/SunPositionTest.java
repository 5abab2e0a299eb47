package dev.ledgerwing.core.power.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Worked example of Reda and Andreas, Solar Energy 76(5), 577-589, 2004 (NREL/TP-560-34302). */
class SunPositionTest {

    private static final double LATITUDE_DEG = 39.742476;
    private static final double LONGITUDE_DEG = -105.1786;
    private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-7);
    private static final double MINUTE = 1.0 / 60;

    private static final SunPosition SUN = SunPosition.at(
            ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, OFFSET),
            new Standpoint(LATITUDE_DEG, LONGITUDE_DEG, 1830.14, 820, 11));

    @Test
    void standsWhereThePublishedExampleHasIt() {
        assertThat(SUN.zenithDeg()).isCloseTo(50.111622, within(0.001));
        assertThat(SUN.azimuthDeg()).isCloseTo(194.340241, within(0.001));
    }

    /** Slope 30 degrees, turned 10 degrees from south to east: published incidence 25.187 degrees. */
    @Test
    void meetsASlopeAtThePublishedAngle() {
        double cosine = new PanelLight(30, SUN, Irradiance.DARK).cosineFacing(180 - 10);

        assertThat(Math.toDegrees(Math.acos(cosine))).isCloseTo(25.187, within(0.001));
    }

    /** Published sunrise 06:12:43. The published sunset is that of the evening before; 17:18:51 solved by hand for zenith 90.8333. */
    @Test
    void risesAndSetsOnTheDateOfTheClockOnTheField() {
        DaySun sun = DaySun.of(LocalDate.of(2003, 10, 17), OFFSET, LATITUDE_DEG, LONGITUDE_DEG);

        assertThat(sun.kind()).isEqualTo(DaySun.Kind.DAY_AND_NIGHT);
        assertThat(sun.riseHour()).isCloseTo(6 + 12 * MINUTE + 43 / 3600.0, within(2 / 3600.0));
        assertThat(sun.setHour()).isCloseTo(17 + 18 * MINUTE + 51 / 3600.0, within(2 / 3600.0));
    }

    /** The clock on the field may run many hours off the sun: the hours are still those of its own date. */
    @Test
    void risesAndSetsOnTheDateOfAClockThatIsFarOff() {
        for (int hours = -14; hours <= 14; hours++) {
            DaySun sun = DaySun.of(LocalDate.of(2003, 10, 17), ZoneOffset.ofHours(hours), LATITUDE_DEG, LONGITUDE_DEG);

            assertThat(sun.riseHour()).as("rise, %d h", hours).isCloseTo((6.2 + 7 + hours + 24) % 24, within(0.05));
            assertThat(sun.setHour()).as("set, %d h", hours).isCloseTo((17.3 + 7 + hours + 24) % 24, within(0.05));
        }
    }

    /** In the far north in June the sun of one date goes down after midnight: on each date it first sets, then rises. */
    @Test
    void setsOnTheDateOfTheClockAlsoAfterMidnight() {
        DaySun sun = DaySun.of(LocalDate.of(2026, 6, 21), ZoneOffset.ofHours(1), 65, -8);

        assertThat(sun.kind()).isEqualTo(DaySun.Kind.DAY_AND_NIGHT);
        assertThat(sun.setHour()).isBetween(0.0, 1.0);
        assertThat(sun.riseHour()).isBetween(2.0, 3.0);
        // the upper edge of a sun 0.83 degrees below: bending of light and half its width
        assertThat(elevationDeg(sun.setHour())).isBetween(-0.9, 0.0);
        assertThat(elevationDeg(sun.riseHour())).isBetween(-0.9, 0.0);
    }

    private static double elevationDeg(@Nullable Double hour) {
        ZonedDateTime moment = LocalDate.of(2026, 6, 21)
                .atStartOfDay(ZoneOffset.ofHours(1))
                .plusSeconds(Math.round(Objects.requireNonNull(hour) * 3600));
        return 90 - SunPosition.at(moment, new Standpoint(65, -8, 0, 1013, 10)).zenithDeg();
    }

    @Test
    void knowsDaysWithoutNightAndNightsWithoutDay() {
        DaySun summer = DaySun.of(LocalDate.of(2026, 6, 21), ZoneOffset.ofHours(2), 78.2, 15.6);
        DaySun winter = DaySun.of(LocalDate.of(2026, 12, 21), ZoneOffset.ofHours(1), 78.2, 15.6);

        assertThat(summer).isEqualTo(new DaySun(DaySun.Kind.POLAR_DAY, null, null));
        assertThat(winter).isEqualTo(new DaySun(DaySun.Kind.POLAR_NIGHT, null, null));
    }

    @Test
    void knowsThePolesThemselves() {
        assertThat(DaySun.of(LocalDate.of(2026, 6, 21), ZoneOffset.UTC, 90, 0).kind())
                .isEqualTo(DaySun.Kind.POLAR_DAY);
        assertThat(DaySun.of(LocalDate.of(2026, 6, 21), ZoneOffset.UTC, -90, 0).kind())
                .isEqualTo(DaySun.Kind.POLAR_NIGHT);
    }
}
