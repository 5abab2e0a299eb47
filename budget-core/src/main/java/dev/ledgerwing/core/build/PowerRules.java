package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * What the supply is judged by. Everything may be left out: null = the project's own default. A reserve is the share of a rating that
 * must stay free.
 *
 * @param dropLimitPercent how much of a rail's voltage may be lost in the wires on the way to it
 * @param wireC temperature of the wires when voltages are reckoned
 * @param wantedMinutes how long the flight shall last; null = not said
 * @param landingReserveMinutes minutes of the stretching phase that must be left at the end, on top of what the pack must keep
 * @param coldestCellC coldest and {@code hottestCellC} hottest that solar cells get
 */
public record PowerRules(
        @Nullable Double sourceReservePercent,
        @Nullable Double wireReservePercent,
        @Nullable Double connectorReservePercent,
        @Nullable Double fuseReservePercent,
        @Nullable Double switchReservePercent,
        @Nullable Double sensorReservePercent,
        @Nullable Double diodeReservePercent,
        @Nullable Double regulatorReservePercent,
        @Nullable Double controllerReservePercent,
        @Nullable Double dropLimitPercent,
        @Nullable Double wireC,
        @Nullable Double wantedMinutes,
        @Nullable Double landingReserveMinutes,
        @Nullable Double coldestCellC,
        @Nullable Double hottestCellC) {

    /** Ledgerwing's own choice; from no publication. */
    public static final double RESERVE_PERCENT = 20;
    /** At or below half of its rating at full power a motor controller is comfortable: common practice, no source. */
    public static final double CONTROLLER_RESERVE_PERCENT = 50;
    /** Of a main feed, FAA AC 43.13-1B chapter 11: not over 2 % of the regulated voltage. */
    public static final double DROP_LIMIT_PERCENT = 2;
    /** Ledgerwing's own choice; from no publication. */
    public static final double WIRE_C = 40;
    /** Ledgerwing's own choice; from no publication. */
    public static final double LANDING_RESERVE_MINUTES = 5;
    /** Ledgerwing's own choice; from no publication. */
    public static final double COLDEST_CELL_C = -10;
    /** Ledgerwing's own choice; from no publication. */
    public static final double HOTTEST_CELL_C = 70;

    public static final PowerRules DEFAULT =
            new PowerRules(null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);

    public PowerRules {
        reserve("sourceReservePercent", sourceReservePercent);
        reserve("wireReservePercent", wireReservePercent);
        reserve("connectorReservePercent", connectorReservePercent);
        reserve("fuseReservePercent", fuseReservePercent);
        reserve("switchReservePercent", switchReservePercent);
        reserve("sensorReservePercent", sensorReservePercent);
        reserve("diodeReservePercent", diodeReservePercent);
        reserve("regulatorReservePercent", regulatorReservePercent);
        reserve("controllerReservePercent", controllerReservePercent);
        Check.within("dropLimitPercent", dropLimitPercent, 0.1, 50, " %");
        Check.within("wireC", wireC, -60, 200, " °C");
        Check.within("wantedMinutes", wantedMinutes, 0, 100_000, " min");
        Check.within("landingReserveMinutes", landingReserveMinutes, 0, 10_000, " min");
        Check.within("coldestCellC", coldestCellC, -80, 60, " °C");
        Check.within("hottestCellC", hottestCellC, 0, 150, " °C");
    }

    private static void reserve(String what, @Nullable Double percent) {
        Check.within(what, percent, 0, 90, " %");
    }

    /** The share of a source's rating that must stay free, in per cent. */
    public double sourceReserve() {
        return or(sourceReservePercent, RESERVE_PERCENT);
    }

    /** The share of an element's rating that must stay free, in per cent. */
    public double reserve(FeedElement.Kind kind) {
        return switch (kind) {
            case WIRE -> or(wireReservePercent, RESERVE_PERCENT);
            case CONNECTOR -> or(connectorReservePercent, RESERVE_PERCENT);
            case FUSE, BREAKER -> or(fuseReservePercent, RESERVE_PERCENT);
            case SWITCH -> or(switchReservePercent, RESERVE_PERCENT);
            case SENSOR -> or(sensorReservePercent, RESERVE_PERCENT);
            case DIODE -> or(diodeReservePercent, RESERVE_PERCENT);
            case REGULATOR -> or(regulatorReservePercent, RESERVE_PERCENT);
            case MOTOR_CONTROLLER -> or(controllerReservePercent, CONTROLLER_RESERVE_PERCENT);
        };
    }

    public double dropLimitInForce() {
        return or(dropLimitPercent, DROP_LIMIT_PERCENT);
    }

    public double wireCInForce() {
        return or(wireC, WIRE_C);
    }

    public double landingReserveInForce() {
        return or(landingReserveMinutes, LANDING_RESERVE_MINUTES);
    }

    public double coldestCellInForce() {
        return or(coldestCellC, COLDEST_CELL_C);
    }

    public double hottestCellInForce() {
        return or(hottestCellC, HOTTEST_CELL_C);
    }

    private static double or(@Nullable Double value, double otherwise) {
        return value == null ? otherwise : value;
    }
}
