package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where an airframe balances in its design case and between which limits; null = not known, or none.
 *
 * @param percent the same in per cent of the chord
 */
public record CgFigure(
        @Nullable Double xMm,
        @Nullable Double percent,
        @Nullable Double forwardMm,
        @Nullable Double aftMm,
        @Nullable Double forwardPercent,
        @Nullable Double aftPercent) {

    /** From the figures of a review. */
    public static CgFigure of(Map<String, Double> figures) {
        return new CgFigure(
                figures.get("balance.cgXMm"),
                figures.get("balance.cgPercentMac"),
                figures.get("balance.forwardLimitXMm"),
                figures.get("balance.aftLimitXMm"),
                figures.get("balance.forwardLimitPercentMac"),
                figures.get("balance.aftLimitPercentMac"));
    }

    /** {@code 36.4 % MAC, 28 to 38}; {@code 643 mm, 610 to 660} without a wing. */
    public String words(Figures figures) {
        if (xMm == null) {
            return "no CG yet";
        }
        String band = band(figures);
        return cg(figures) + (band.isEmpty() ? ", no limits" : ", " + band);
    }

    /** {@code 36.4 % MAC}, or {@code 643 mm}. */
    public String cg(Figures figures) {
        if (xMm == null) {
            return "–";
        }
        return percent == null ? figures.length(Length.ofMm(xMm)) : Figures.percent(percent) + " MAC";
    }

    /** {@code 28 to 38}, in the unit of the CG; empty where there are no limits. */
    public String band(Figures figures) {
        if (percent != null && forwardPercent != null && aftPercent != null) {
            return Figures.number(forwardPercent, 1) + " to " + Figures.number(aftPercent, 1);
        }
        return forwardMm == null || aftMm == null
                ? ""
                : figures.lengthNumber(Length.ofMm(forwardMm)) + " to " + figures.lengthNumber(Length.ofMm(aftMm));
    }
}
