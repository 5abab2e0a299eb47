package dev.ledgerwing.core.power.solar;

import org.jspecify.annotations.Nullable;

/**
 * One moment of a day's balance; null = not known.
 *
 * @param hour since midnight of the day's date by the clock on the field: 26 is two in the morning after
 * @param sunElevationDeg height of the sun above the horizon, below 0 at night
 * @param harvestW what arrives from the cells at the pack, and {@code consumptionW} what is drawn
 * @param chargePercent how full the packs are
 */
public record DayPoint(
        double hour,
        double sunElevationDeg,
        @Nullable Double harvestW,
        @Nullable Double consumptionW,
        @Nullable Double chargePercent) {}
