package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarArray.Connection;
import dev.ledgerwing.core.power.energy.Flights;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Solar cells to charge the three-cell packs of {@link Flights} with: 9.0 V empty, 11.1 V nominal, 12.6 V full. */
final class Suns {

    /** 30 W at 15 V, 18 V open, 2.2 A short; 0.3 % of 18 V less for each degree. */
    static final SolarArray DIRECT =
            new SolarArray(30.0, 15.0, 18.0, 2.2, -0.4, -0.3, 0, 90, false, Connection.DIRECT, null, null);

    static final SolarArray TRACKED =
            new SolarArray(30.0, 15.0, 18.0, 2.2, -0.4, -0.3, 0, 90, false, Connection.TRACKER, 90.0, null);

    private Suns() {}

    static PowerSource cells(SolarArray array) {
        return PowerSource.solar("cells", "Cells", null, array);
    }

    /** Cells straight on the rail of one pack. */
    static Build on(PowerSource pack, SolarArray array) {
        return with(List.of(pack, cells(array)), Flights.feed("cells", "main"), Flights.feed(pack.code(), "main"));
    }

    static Build with(List<PowerSource> sources, Feed... feeds) {
        List<Rail> rails = List.of(Flights.rail("main"), Flights.rail("other"));
        return Flights.build(Flights.power(sources, rails, List.of(feeds)), List.of());
    }

    static SolarArray direct(
            @Nullable Double maxPowerV, @Nullable Double openCircuitV, @Nullable Double voltagePercentPerC) {
        return new SolarArray(
                30.0,
                maxPowerV,
                openCircuitV,
                2.2,
                -0.4,
                voltagePercentPerC,
                0,
                90,
                false,
                Connection.DIRECT,
                null,
                null);
    }
}
