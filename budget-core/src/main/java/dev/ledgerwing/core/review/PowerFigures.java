package dev.ledgerwing.core.review;

import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.power.network.SourceLoad;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.power.solar.DayCharge;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The figures of the power budget under their names; what is not known is left out. A load is in per cent of the rating, the worse of
 * continuous and peak, and a margin what is left of 100.
 */
final class PowerFigures {

    private final Map<String, Double> figures = new LinkedHashMap<>();

    private PowerFigures() {}

    static Map<String, Double> of(PowerStatement statement) {
        PowerFigures power = new PowerFigures();
        power.put("power.worstMarginPercent", statement.worstMarginPercent().orElse(null));
        power.put("power.enduranceMinutes", statement.energy().endurance().minutes());
        power.day(statement.day());
        statement.network().sources().forEach(power::source);
        statement.network().rails().forEach(power::rail);
        statement.network().elements().forEach(power::element);
        return power.figures;
    }

    private void day(@Nullable DayBalance day) {
        if (day == null) {
            return;
        }
        put("power.day.harvestWh", day.harvestWh());
        put("power.day.consumptionWh", day.consumptionWh());
        DayCharge charge = day.charge();
        if (charge != null) {
            put("power.day.lowestPercent", charge.lowestPercent());
        }
    }

    private void source(SourceLoad load) {
        put("power.source." + load.source().code() + ".loadPercent", load.loadPercent());
    }

    private void rail(RailState rail) {
        String prefix = "power.rail." + rail.rail().code() + ".";
        if (rail.isSolved()) {
            put(prefix + "typicalA", rail.typicalA());
            put(prefix + "peakA", rail.peakA());
        }
        put(prefix + "marginPercent", rail.marginPercent());
        put(prefix + "lowestV", rail.lowestV());
        put(prefix + "highestV", rail.highestV());
    }

    private void element(ElementLoad load) {
        String prefix = "power.element." + load.at().feed() + "." + load.at().number() + ".";
        put(prefix + "loadPercent", load.loadPercent());
        put(prefix + "marginPercent", load.marginPercent());
    }

    private void put(String name, @Nullable Double value) {
        if (value != null) {
            figures.put(name, value);
        }
    }
}
