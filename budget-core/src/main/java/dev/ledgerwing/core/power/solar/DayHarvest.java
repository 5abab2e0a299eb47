package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarDay;
import java.util.List;
import java.util.stream.DoubleStream;

/** What all cells together bring at one moment of a day. */
record DayHarvest(SolarDay day, List<Field> fields) {

    /** Cells and what they bring. */
    record Field(SolarArray array, CellOutput output) {}

    /** Watts that arrive at the packs. */
    double watts(SunPosition sun, int dayOfYear) {
        Irradiance clear = ClearSky.light(sun, AirPressure.atHPa(day.elevationM()), dayOfYear);
        Irradiance light = clear.times(day.skyPercent() / 100);
        double cellsW = fields.stream()
                .mapToDouble(field -> watts(field, new PanelLight(field.array().tiltDeg(), sun, light)))
                .sum();
        return cellsW * day.chainPercent() / 100;
    }

    /** Halves that lean to both sides are reckoned each by itself, in its own light and at its own temperature. */
    private double watts(Field field, PanelLight light) {
        return lightOnHalves(field.array(), light)
                .map(each -> field.output().watts(new CellPower(each, CellTemperature.of(day.airC(), each))))
                .average()
                .orElseThrow();
    }

    /** Circling, cells follow the average light: they warm up and cool down more slowly than a circle is flown. */
    private DoubleStream lightOnHalves(SolarArray array, PanelLight light) {
        Double heading = day.headingDeg();
        if (heading == null) {
            return DoubleStream.of(light.circling());
        }
        double right = light.facing(heading + array.facesDeg());
        return array.mirrored()
                ? DoubleStream.of(right, light.facing(heading - array.facesDeg()))
                : DoubleStream.of(right);
    }
}
