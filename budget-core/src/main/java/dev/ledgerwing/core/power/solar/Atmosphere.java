package dev.ledgerwing.core.power.solar;

/**
 * What weakens the light of a clear sky.
 *
 * @param ozoneCm ozone and {@code waterCm} water above, as layers in cm
 * @param depth500 optical depth of haze at 500 nm, and {@code depth380} at 380 nm
 * @param forwardShare of the light that haze scatters onwards
 * @param albedo share of the light that the ground throws back
 */
record Atmosphere(
        double ozoneCm, double waterCm, double depth500, double depth380, double forwardShare, double albedo) {

    /** Ledgerwing's own choice: the inputs of the worked example of NREL's spreadsheet BIRD_08_16_2012, fair weather. */
    static final Atmosphere STANDARD = new Atmosphere(0.3, 1.5, 0.1, 0.15, 0.85, 0.2);

    /** Optical depth of haze over all colours. */
    double broadbandDepth() {
        return 0.27583 * depth380 + 0.35 * depth500;
    }
}
