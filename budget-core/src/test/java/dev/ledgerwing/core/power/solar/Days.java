package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarArray.Connection;
import dev.ledgerwing.core.build.SolarDay;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Days, cells and packs of tests: a moor in the north, cells on both wings. */
final class Days {

    static final SolarDay JUNE = day(53.2, -6.8, LocalDate.of(2026, 6, 21), 1);
    static final SolarDay DECEMBER = day(53.2, -6.8, LocalDate.of(2026, 12, 21), 0);
    static final DayStore PACKS = new DayStore(500.0, 80.0, 21.6);
    static final PowerSource CELLS = PowerSource.solar("wing-cells", "Wing cells", null, tracked(100.0, -0.35, 96.0));

    private Days() {}

    static SolarDay day(double latitudeDeg, double longitudeDeg, LocalDate date, double utcOffsetHours) {
        return new SolarDay(null, latitudeDeg, longitudeDeg, date, utcOffsetHours, 400, 15, 90, 92, null, 12, 90, null);
    }

    static SolarDay starting(SolarDay day, double hour, double percent) {
        return new SolarDay(
                day.place(),
                day.latitudeDeg(),
                day.longitudeDeg(),
                day.date(),
                day.utcOffsetHours(),
                day.elevationM(),
                day.airC(),
                day.skyPercent(),
                day.chainPercent(),
                day.headingDeg(),
                hour,
                percent,
                day.phase());
    }

    static SolarDay heading(SolarDay day, double headingDeg) {
        return new SolarDay(
                day.place(),
                day.latitudeDeg(),
                day.longitudeDeg(),
                day.date(),
                day.utcOffsetHours(),
                day.elevationM(),
                day.airC(),
                day.skyPercent(),
                day.chainPercent(),
                headingDeg,
                day.startHour(),
                day.startPercent(),
                day.phase());
    }

    static SolarArray tracked(
            @Nullable Double maxPowerW, @Nullable Double powerPercentPerC, @Nullable Double trackerEfficiencyPercent) {
        return new SolarArray(
                maxPowerW,
                null,
                null,
                null,
                powerPercentPerC,
                null,
                12,
                90,
                true,
                Connection.TRACKER,
                trackerEfficiencyPercent,
                null);
    }

    /** 100 W at 20 V and 5 A, 24 V open, 5.4 A shorted. */
    static PowerSource tied(@Nullable Double shortCircuitA) {
        SolarArray array = new SolarArray(
                100.0, 20.0, 24.0, shortCircuitA, -0.35, -0.28, 0, 0, false, Connection.DIRECT, null, null);
        return PowerSource.solar("wing-cells", "Wing cells", null, array);
    }

    static PowerSource pack(String code, int seriesCells, @Nullable Double cellCapacityMah, double usablePercent) {
        Pack pack = new Pack(
                Pack.Chemistry.LITHIUM_ION,
                seriesCells,
                2,
                cellCapacityMah,
                null,
                null,
                null,
                usablePercent,
                null,
                4.2,
                3.6,
                2.5,
                true);
        return PowerSource.battery(code, code, null, pack);
    }

    static DayBalance balance(SolarDay day, @Nullable Double consumptionW) {
        return DayBalance.of(day, List.of(CELLS), PACKS, consumptionW);
    }
}
