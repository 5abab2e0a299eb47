package dev.ledgerwing.core.review;

import dev.ledgerwing.core.mass.MarginOf;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Mass;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The figures of the mass budget under their names. */
final class MassFigures {

    private final Map<String, Double> figures = new LinkedHashMap<>();

    private MassFigures() {}

    static Map<String, Double> of(MassForecast forecast) {
        MassFigures mass = new MassFigures();
        mass.statement(forecast.statement());
        mass.limits(forecast.statement());
        mass.forecast(forecast);
        return mass.figures;
    }

    private void statement(MassStatement statement) {
        put("mass.basicG", statement.basic());
        put("mass.growthG", statement.growth());
        put("mass.bookingG", statement.booking());
        put("mass.predictedG", statement.predicted());
        put("mass.weighedPercent", statement.total().weighedPercent());
        put("mass.lines", (double) statement.build().lines().size());
        put("mass.unknownLines", (double) statement.unknownCount());
    }

    private void limits(MassStatement statement) {
        put("mass.reservePercent", statement.reservePercent());
        statement.margin().ifPresent(margin -> {
            put("mass.targetG", margin.target());
            put("mass.marginG", margin.mass());
            put("mass.marginPercentOfBasic", margin.percent(MarginOf.BASIC));
            put("mass.marginPercentOfPredicted", margin.percent(MarginOf.PREDICTED));
            put("mass.marginPercentOfTarget", margin.percent(MarginOf.TARGET));
        });
        put("mass.ceilingG", statement.build().budget().ceilingMass());
        put("mass.heaviestCaseG", statement.heaviestFlight().predicted());
    }

    private void forecast(MassForecast forecast) {
        put("mass.standardUncertaintyG", forecast.standardUncertainty());
        if (forecast.isComplete()) {
            put("mass.band95LowG", forecast.band95().low());
            put("mass.band95HighG", forecast.band95().high());
        }
        put("mass.probabilityWithinTarget", forecast.probabilityWithinTarget());
    }

    private void put(String name, @Nullable Mass mass) {
        put(name, mass == null ? null : mass.grams());
    }

    private void put(String name, @Nullable Double value) {
        if (value != null) {
            figures.put(name, value);
        }
    }
}
