package dev.ledgerwing.web.power;

import dev.ledgerwing.core.quantity.NumberUnit;
import dev.ledgerwing.web.forms.Bounds;

/** How far the figures of the supply may go: what the record takes, told at the field before the record has to refuse it. */
final class PowerBounds {

    static final Bounds CELL_CAPACITY = new Bounds(NumberUnit.MILLIAMPERE_HOUR, 1, 1_000_000);
    static final Bounds CONTINUOUS_C = new Bounds(NumberUnit.C_RATE, 0.01, 500);
    static final Bounds BURST_C = new Bounds(NumberUnit.C_RATE, 0.01, 1000);
    static final Bounds CHARGE_C = new Bounds(NumberUnit.C_RATE, 0.01, 100);
    static final Bounds CELL_RESISTANCE = new Bounds(NumberUnit.MILLIOHM, 0, 10_000);
    static final Bounds CELL_VOLTAGE = new Bounds(NumberUnit.VOLT, 0.1, 10);
    static final Bounds SHARE = new Bounds(NumberUnit.PERCENT, 1, 100);
    static final int MOST_CELLS = 200;

    static final Bounds ARRAY_POWER = new Bounds(NumberUnit.WATT, 0.001, 100_000);
    static final Bounds ARRAY_VOLTAGE = new Bounds(NumberUnit.VOLT, 0.01, 1000);
    static final Bounds ARRAY_CURRENT = new Bounds(NumberUnit.AMPERE, 0.001, 1000);
    static final Bounds PER_CELSIUS = new Bounds(NumberUnit.PERCENT_PER_CELSIUS, -5, 5);
    static final Bounds TILT = new Bounds(NumberUnit.DEGREE, 0, 90);
    static final Bounds HEADING = new Bounds(NumberUnit.DEGREE, 0, 360);

    static final Bounds OUTPUT_VOLTAGE = new Bounds(NumberUnit.VOLT, 0.1, 1000);
    static final Bounds VOLTAGE = new Bounds(NumberUnit.VOLT, 0, 1000);
    static final Bounds RATING = new Bounds(NumberUnit.AMPERE, 0.001, 2000);
    static final Bounds PEAK_RATING = new Bounds(NumberUnit.AMPERE, 0.001, 5000);
    static final Bounds RESISTANCE = new Bounds(NumberUnit.MILLIOHM, 0, 100_000);
    static final Bounds FORWARD_VOLTAGE = new Bounds(NumberUnit.VOLT, 0, 5);
    static final Bounds DROPOUT = new Bounds(NumberUnit.VOLT, 0, 100);
    static final Bounds QUIESCENT = new Bounds(NumberUnit.AMPERE, 0, 100);
    static final Bounds INSULATION = new Bounds(NumberUnit.CELSIUS, 40, 600);
    static final int MOST_CONDUCTORS = 100;
    static final int MOST_SIDE_BY_SIDE = 20;
    static final int MOST_ELEMENTS = 50;

    static final Bounds TYPICAL = new Bounds(NumberUnit.AMPERE, 0, 1000);
    static final Bounds PEAK = new Bounds(NumberUnit.AMPERE, 0, 2000);
    static final Bounds DUTY = new Bounds(NumberUnit.PERCENT, 0, 100);
    static final int LONGEST_GROUP = 40;

    static final Bounds MINUTES = new Bounds(NumberUnit.MINUTE, 0, 100_000);
    static final Bounds LANDING_MINUTES = new Bounds(NumberUnit.MINUTE, 0, 10_000);
    static final Bounds RESERVE = new Bounds(NumberUnit.PERCENT, 0, 90);
    static final Bounds DROP_LIMIT = new Bounds(NumberUnit.PERCENT, 0.1, 50);
    static final Bounds WIRE_WARMTH = new Bounds(NumberUnit.CELSIUS, -60, 200);
    static final Bounds COLDEST_CELL = new Bounds(NumberUnit.CELSIUS, -80, 60);
    static final Bounds HOTTEST_CELL = new Bounds(NumberUnit.CELSIUS, 0, 150);

    static final Bounds LATITUDE = new Bounds(NumberUnit.LATITUDE, -90, 90);
    static final Bounds LONGITUDE = new Bounds(NumberUnit.LONGITUDE, -180, 180);
    static final Bounds ELEVATION = new Bounds(NumberUnit.METRE, -500, 30_000);
    static final Bounds AIR = new Bounds(NumberUnit.CELSIUS, -90, 60);
    static final Bounds SKY = new Bounds(NumberUnit.PERCENT, 0, 120);
    static final Bounds CHARGE = new Bounds(NumberUnit.PERCENT, 0, 100);

    private PowerBounds() {}
}
