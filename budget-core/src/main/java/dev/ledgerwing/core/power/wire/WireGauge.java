package dev.ledgerwing.core.power.wire;

/**
 * Solid round annealed copper wire of one American wire gauge.
 *
 * @param awg gauge; 0 is 1/0, -3 is 4/0
 */
public record WireGauge(int awg) {

    /** Resistivity of annealed copper at 20 °C, ohm mm2/m: IEC 60028, 1/58. */
    static final double COPPER_OHM_MM2_PER_M = 0.017241;
    /** Change of the resistance for each kelvin from 20 °C: IEC 60028. */
    static final double COPPER_PER_K = 0.00393;
    /** Density of copper, g/cm3. */
    static final double COPPER_G_PER_CM3 = 8.96;

    private static final double AT_C = 20;
    private static final double GAUGE_36_MM = 0.127;

    public static WireGauge of(int awg) {
        return new WireGauge(awg);
    }

    /** d = 0.127 mm x 92^((36 - n) / 39), ASTM B258. */
    public double diameterMm() {
        return GAUGE_36_MM * Math.pow(92, (36 - awg) / 39.0);
    }

    /** Area of the copper in mm2. */
    public double areaMm2() {
        return Math.PI / 4 * diameterMm() * diameterMm();
    }

    /**
     * Ohms of one metre of one wire with the copper at {@code conductorC}. Tables of stranded, tin-plated wire give other values: never
     * mix the two.
     */
    public double ohmPerM(double conductorC) {
        return COPPER_OHM_MM2_PER_M / areaMm2() * (1 + COPPER_PER_K * (conductorC - AT_C));
    }

    /** Grams of copper in one metre of one wire: 1 mm2 x 1 m = 1 cm3. */
    public double copperGPerM() {
        return areaMm2() * COPPER_G_PER_CM3;
    }

    /** As people write it: {@code 22 AWG}, {@code 2/0 AWG}. */
    public String label() {
        return (awg > 0 ? awg : (1 - awg) + "/0") + " AWG";
    }
}
