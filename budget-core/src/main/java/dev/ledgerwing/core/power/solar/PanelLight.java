package dev.ledgerwing.core.power.solar;

/**
 * Light on cells that lean.
 *
 * @param tiltDeg how far they lean from level
 */
record PanelLight(double tiltDeg, SunPosition sun, Irradiance light) {

    /** W/m2 on cells that lean towards {@code facesDeg} clockwise from north. */
    double facing(double facesDeg) {
        return total(Math.max(0, cosineFacing(facesDeg)));
    }

    /** W/m2 as the average over all headings, none of them more often than another. */
    double circling() {
        return total(averageCosine());
    }

    /** cos z cos tilt + sin z sin tilt cos(azimuth of the sun - azimuth of the cells); below 0 the sun is behind them. */
    double cosineFacing(double facesDeg) {
        return level() + leaning() * Math.cos(Math.toRadians(sun.azimuthDeg() - facesDeg));
    }

    /**
     * Average of max(0, a + b cos h) over all h, a = cos z cos tilt, b = sin z sin tilt. By derivation: the sun is before the cells
     * while h is within h0 = acos(-a / b) on either side, so it is (a h0 + b sin h0) / pi; a itself where the sun never gets behind.
     */
    double averageCosine() {
        double a = level();
        double b = Math.abs(leaning());
        if (Math.abs(a) >= b) {
            return Math.max(0, a);
        }
        double h0 = Math.acos(-a / b);
        return (a * h0 + b * Math.sin(h0)) / Math.PI;
    }

    /** The beam, a sky equally bright all over, and what the ground throws back. */
    private double total(double cosine) {
        double cosTilt = Math.cos(Math.toRadians(tiltDeg));
        return light.directNormal() * cosine
                + skyOn(light.diffuse(), cosTilt)
                + groundOn(light.global() * Atmosphere.STANDARD.albedo(), cosTilt);
    }

    static double skyOn(double diffuse, double cosTilt) {
        return diffuse * (1 + cosTilt) / 2;
    }

    static double groundOn(double thrownBack, double cosTilt) {
        return thrownBack * (1 - cosTilt) / 2;
    }

    private double level() {
        return Math.cos(sun.zenith()) * Math.cos(Math.toRadians(tiltDeg));
    }

    private double leaning() {
        return Math.sin(sun.zenith()) * Math.sin(Math.toRadians(tiltDeg));
    }
}
