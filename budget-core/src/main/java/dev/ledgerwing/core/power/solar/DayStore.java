package dev.ledgerwing.core.power.solar;

import org.jspecify.annotations.Nullable;

/**
 * The packs of a day as one.
 *
 * @param capacityWh energy from full to empty, at nominal voltage
 * @param usablePercent share of it that may be taken out
 * @param nominalV voltage that directly connected cells are held at; null = not known, as everywhere here
 */
public record DayStore(
        @Nullable Double capacityWh,
        @Nullable Double usablePercent,
        @Nullable Double nominalV) {

    public static final DayStore UNKNOWN = new DayStore(null, null, null);
}
