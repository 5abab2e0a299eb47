package dev.ledgerwing.core.power.solar;

/**
 * The light of sun and sky in W/m2.
 *
 * @param directNormal on a surface that looks into the sun
 * @param diffuse from the sky, and {@code global} both together, on a level surface
 */
record Irradiance(double directNormal, double diffuse, double global) {

    static final Irradiance DARK = new Irradiance(0, 0, 0);

    Irradiance times(double share) {
        return new Irradiance(directNormal * share, diffuse * share, global * share);
    }
}
