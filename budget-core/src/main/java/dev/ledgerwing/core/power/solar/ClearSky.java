package dev.ledgerwing.core.power.solar;

/**
 * Light of a clear sky: Bird and Hulstrom, SERI/TR-642-761, 1981. Twilight counts as dark.
 *
 * @param relativeAirMass see {@link AirMass#relative}
 */
record ClearSky(double zenithDeg, double relativeAirMass, double pressureHPa, Atmosphere air) {

    /** World radiation centre's solar constant in W/m2, the one that the model was fitted with. */
    static final double SOLAR_CONSTANT = 1367;

    /** Where the fitted expression of Rayleigh scattering turns: with more air it would let more light through again. */
    private static final double RAYLEIGH_TURNS_AT = 14.094;

    static Irradiance light(SunPosition sun, double pressureHPa, int dayOfYear) {
        if (!sun.isUp()) {
            return Irradiance.DARK;
        }
        double airMass = AirMass.relative(sun.zenithDeg());
        return new ClearSky(sun.zenithDeg(), airMass, pressureHPa, Atmosphere.STANDARD).under(outsideTheAir(dayOfYear));
    }

    /** W/m2 square to the sun outside the air; distance of the sun after Spencer, 1971; days count from 1. */
    static double outsideTheAir(int dayOfYear) {
        double b = 2 * Math.PI * (dayOfYear - 1) / 365;
        return SOLAR_CONSTANT
                * (1.00011
                        + 0.034221 * Math.cos(b)
                        + 0.00128 * Math.sin(b)
                        + 0.000719 * Math.cos(2 * b)
                        + 0.000077 * Math.sin(2 * b));
    }

    /** @param outside W/m2 square to the sun outside the air */
    Irradiance under(double outside) {
        double cosZenith = Math.cos(Math.toRadians(zenithDeg));
        double haze = haze();
        double absorbed = hazeAbsorption(haze);
        double gases = ozone() * mixedGases() * water();
        double rayleigh = rayleigh();
        double direct = 0.9662 * outside * haze * gases * rayleigh;
        double scattered = outside
                * cosZenith
                * 0.79
                * gases
                * absorbed
                * (0.5 * (1 - rayleigh) + air.forwardShare() * (1 - haze / absorbed))
                / (1 - relativeAirMass + Math.pow(relativeAirMass, 1.02));
        double skyAlbedo = 0.0685 + (1 - air.forwardShare()) * (1 - haze / absorbed);
        double global = (direct * cosZenith + scattered) / (1 - air.albedo() * skyAlbedo);
        return new Irradiance(direct, global - direct * cosZenith, global);
    }

    private double absoluteAirMass() {
        return AirMass.absolute(relativeAirMass, pressureHPa);
    }

    double rayleigh() {
        double m = Math.min(absoluteAirMass(), RAYLEIGH_TURNS_AT);
        return Math.exp(-0.0903 * Math.pow(m, 0.84) * (1 + m - Math.pow(m, 1.01)));
    }

    double ozone() {
        double x = air.ozoneCm() * relativeAirMass;
        return 1 - 0.1611 * x * Math.pow(1 + 139.48 * x, -0.3034) - 0.002715 * x / (1 + 0.044 * x + 0.0003 * x * x);
    }

    double mixedGases() {
        return Math.exp(-0.0127 * Math.pow(absoluteAirMass(), 0.26));
    }

    double water() {
        double x = air.waterCm() * relativeAirMass;
        return 1 - 2.4959 * x / (Math.pow(1 + 79.034 * x, 0.6828) + 6.385 * x);
    }

    double haze() {
        double depth = air.broadbandDepth();
        return Math.exp(
                -Math.pow(depth, 0.873) * (1 + depth - Math.pow(depth, 0.7088)) * Math.pow(relativeAirMass, 0.9108));
    }

    /** Haze that only absorbs lets through no less than haze that scatters as well; right at the horizon the fit says otherwise. */
    private double hazeAbsorption(double haze) {
        double fitted = 1 - 0.1 * (1 - relativeAirMass + Math.pow(relativeAirMass, 1.06)) * (1 - haze);
        return Math.max(haze, fitted);
    }
}
