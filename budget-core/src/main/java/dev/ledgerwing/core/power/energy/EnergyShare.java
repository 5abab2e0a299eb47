package dev.ledgerwing.core.power.energy;

/**
 * What one source gives, or what the loads on one rail take, on average over a phase.
 *
 * @param code of the source or rail
 */
public record EnergyShare(String code, String name, double meanA, double meanW) {

    private static final double MINUTES_PER_H = 60;
    private static final double MAH_PER_AH = 1000;

    /** Watt-hours in so many minutes. */
    public double energyWh(double minutes) {
        return meanW * minutes / MINUTES_PER_H;
    }

    public double chargeMah(double minutes) {
        return meanA * minutes / MINUTES_PER_H * MAH_PER_AH;
    }
}
