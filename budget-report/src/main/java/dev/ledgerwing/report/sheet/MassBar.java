package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.mass.MassBand;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * A bar of basic mass and what is expected on top of it, with the target and the forecast's band: all places along x in
 * thousandths of the drawing's width.
 *
 * @param target where the target stands; null = none is set
 * @param bandLow start of the 95 per cent band, bandHigh its end; null = no forecast
 */
public record MassBar(
        String basic,
        String onTop,
        @Nullable String target,
        @Nullable String bandLow,
        @Nullable String bandHigh) {

    private static final double WIDTH = 1000;
    private static final double ROOM_AT_THE_END = 1.04;

    /** The bar of one airframe, as long as the longest thing on it needs. */
    static MassBar of(MassForecast forecast) {
        Mass target = forecast.statement().build().budget().targetMass();
        double longest = Math.max(longest(forecast), target == null ? 0 : target.grams());
        return of(forecast, longest * ROOM_AT_THE_END);
    }

    /** The bar of one airframe among others, {@code fullG} grams for the whole width. */
    public static MassBar of(MassForecast forecast, double fullG) {
        MassStatement statement = forecast.statement();
        Mass target = statement.build().budget().targetMass();
        Mass onTop = statement.predicted().minus(statement.basic());
        MassBand band = forecast.isComplete() ? forecast.band95() : null;
        return new MassBar(
                x(statement.basic(), fullG),
                x(onTop, fullG),
                target == null ? null : x(target, fullG),
                band == null ? null : x(band.low(), fullG),
                band == null ? null : x(band.high(), fullG));
    }

    /** Grams that the bar of this forecast needs without its target. */
    public static double longest(MassForecast forecast) {
        MassStatement statement = forecast.statement();
        Mass high = forecast.isComplete() ? forecast.band95().high() : statement.predicted();
        return Math.max(high.grams(), statement.basic().grams());
    }

    private static String x(Mass mass, double fullG) {
        double x = fullG <= 0 ? 0 : Math.max(0, WIDTH * mass.grams() / fullG);
        return BigDecimal.valueOf(x).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
