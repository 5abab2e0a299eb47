package dev.ledgerwing.core.power.solar;

/** Hours since midnight as a clock shows them. */
public final class ClockHour {

    private static final int MINUTES = 60;
    private static final int DAY_MINUTES = 24 * MINUTES;

    private ClockHour() {}

    /** {@code 02:10}, also for 26.17: a new day begins at midnight. */
    public static String text(double hour) {
        int minutes = Math.floorMod(Math.round(hour * MINUTES), DAY_MINUTES);
        return twoDigits(minutes / MINUTES) + ":" + twoDigits(minutes % MINUTES);
    }

    private static String twoDigits(int number) {
        return (number < 10 ? "0" : "") + number;
    }
}
