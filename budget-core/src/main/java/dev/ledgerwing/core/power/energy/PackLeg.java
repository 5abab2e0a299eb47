package dev.ledgerwing.core.power.energy;

/**
 * What one pack gives in one phase.
 *
 * @param minutes how long it lasts; of the one that stretches it does not matter
 */
record PackLeg(double minutes, boolean stretches, double meanA) {

    private static final double MINUTES_PER_H = 60;
    private static final double MAH_PER_AH = 1000;

    static double mah(double meanA, double minutes) {
        return meanA * MAH_PER_AH * minutes / MINUTES_PER_H;
    }

    static double minutes(double mah, double meanA) {
        return mah / MAH_PER_AH / meanA * MINUTES_PER_H;
    }

    double mah() {
        return mah(meanA, minutes);
    }
}
