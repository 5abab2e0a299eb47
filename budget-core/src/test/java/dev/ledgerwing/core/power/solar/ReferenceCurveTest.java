package dev.ledgerwing.core.power.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.SolarDay;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two latitudes in two seasons against {@code /sun/reference.csv}, made by the second implementation that lies beside it. */
class ReferenceCurveTest {

    private static final int HALF_HOUR_MIN = 30;
    /** The reference's position is good to a hundredth of a degree, its bending of light near the horizon to some more. */
    private static final double ANGLE_DEG = 0.02;
    /** Of 100 W at best. */
    private static final double POWER_W = 0.1;

    private static final Map<String, SolarDay> DAYS = Map.of(
            "north-june", Days.day(53.2, -6.8, LocalDate.of(2026, 6, 21), 1),
            "north-december", Days.day(53.2, -6.8, LocalDate.of(2026, 12, 21), 0),
            "south-june", Days.day(-33.5, 18.9, LocalDate.of(2026, 6, 21), 2),
            "south-december", Days.day(-33.5, 18.9, LocalDate.of(2026, 12, 21), 2));

    /** One line of the file. */
    private record Row(
            String name,
            double hour,
            double zenithDeg,
            double azimuthDeg,
            double direct,
            double diffuse,
            double circlingW,
            double headingW) {

        static Row of(String line) {
            String[] field = line.split(",", -1);
            double[] number = IntStream.range(1, 8)
                    .mapToDouble(i -> Double.parseDouble(field[i]))
                    .toArray();
            return new Row(field[0], number[0], number[1], number[2], number[3], number[4], number[5], number[6]);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"north-june", "north-december", "south-june", "south-december"})
    void seesTheSunWhereTheReferenceDoes(String name) throws IOException {
        DayCourse course = new DayCourse(day(name), HALF_HOUR_MIN);
        List<SunPosition> positions = course.positions();
        List<Row> rows = rows(name);

        for (int i = 0; i < rows.size(); i++) {
            SunPosition sun = positions.get(i);
            assertThat(sun.zenithDeg())
                    .as("%s", rows.get(i))
                    .isCloseTo(rows.get(i).zenithDeg(), within(ANGLE_DEG));
            double off = Math.abs(sun.azimuthDeg() - rows.get(i).azimuthDeg());
            assertThat(Math.min(off, 360 - off)).as("%s", rows.get(i)).isLessThan(ANGLE_DEG);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"north-june", "north-december", "south-june", "south-december"})
    void harvestsWhatTheReferenceDoes(String name) throws IOException {
        List<Row> rows = rows(name);
        double[] circlingW = harvestW(day(name));
        double[] headingW = harvestW(Days.heading(day(name), 200));

        for (int i = 0; i < rows.size(); i++) {
            assertThat(circlingW[i]).as("%s", rows.get(i)).isCloseTo(rows.get(i).circlingW(), within(POWER_W));
            assertThat(headingW[i]).as("%s", rows.get(i)).isCloseTo(rows.get(i).headingW(), within(POWER_W));
        }
        assertThat(DoubleStream.of(circlingW).max().orElseThrow()).isGreaterThan(5);
    }

    private static SolarDay day(String name) {
        return Days.starting(Objects.requireNonNull(DAYS.get(name)), 0, 90);
    }

    private static double[] harvestW(SolarDay day) {
        DayInputs inputs = new DayInputs(List.of(Days.CELLS), Days.PACKS, 40.0);
        return DayBalance.of(new DayCourse(day, HALF_HOUR_MIN), inputs).points().stream()
                .mapToDouble(point -> Objects.requireNonNull(point.harvestW()))
                .toArray();
    }

    private static List<Row> rows(String name) throws IOException {
        try (InputStream file =
                Objects.requireNonNull(ReferenceCurveTest.class.getResourceAsStream("/sun/reference.csv"))) {
            List<Row> rows = new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith(name + ","))
                    .map(Row::of)
                    .toList();
            assertThat(rows).hasSize(48);
            return rows;
        }
    }
}
