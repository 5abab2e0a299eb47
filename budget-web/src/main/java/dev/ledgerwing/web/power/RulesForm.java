package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the supply is judged by: reserves by kind, and the other limits. */
final class RulesForm implements PowerForm {

    @Override
    public String view() {
        return "power/rules";
    }

    @Override
    public void show(Build build, Shown fields) {
        PowerRules rules = build.power().rules();
        fields.amount("source", rules.sourceReservePercent())
                .amount("wire", rules.wireReservePercent())
                .amount("connector", rules.connectorReservePercent())
                .amount("fuse", rules.fuseReservePercent())
                .amount("switch", rules.switchReservePercent())
                .amount("sensor", rules.sensorReservePercent())
                .amount("diode", rules.diodeReservePercent())
                .amount("regulator", rules.regulatorReservePercent())
                .amount("controller", rules.controllerReservePercent())
                .amount("drop", rules.dropLimitPercent())
                .amount("wireWarmth", rules.wireC())
                .amount("wanted", rules.wantedMinutes())
                .amount("landing", rules.landingReserveMinutes())
                .amount("coldest", rules.coldestCellC())
                .amount("hottest", rules.hottestCellC());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        return Map.of(
                "usual", "Empty: " + Figures.percent(PowerRules.RESERVE_PERCENT) + ".",
                "usualController", "Empty: " + Figures.percent(PowerRules.CONTROLLER_RESERVE_PERCENT) + ".",
                "usualDrop", "Of the rail's voltage. Empty: " + Figures.percent(PowerRules.DROP_LIMIT_PERCENT) + ".",
                "usualWireC", "Empty: " + figure(PowerRules.WIRE_C) + "\u2009°C.",
                "usualLanding", "Empty: " + figure(PowerRules.LANDING_RESERVE_MINUTES) + "\u2009min.",
                "usualColdest", "Empty: " + figure(PowerRules.COLDEST_CELL_C) + "\u2009°C.",
                "usualHottest", "Empty: " + figure(PowerRules.HOTTEST_CELL_C) + "\u2009°C.");
    }

    private static String figure(double value) {
        return Figures.number(value, 1);
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        PowerRules wanted = new PowerRules(
                reserve("source", entries),
                reserve("wire", entries),
                reserve("connector", entries),
                reserve("fuse", entries),
                reserve("switch", entries),
                reserve("sensor", entries),
                reserve("diode", entries),
                reserve("regulator", entries),
                reserve("controller", entries),
                entries.amount("drop", PowerBounds.DROP_LIMIT),
                entries.amount("wireWarmth", PowerBounds.WIRE_WARMTH),
                entries.amount("wanted", PowerBounds.MINUTES),
                entries.amount("landing", PowerBounds.LANDING_MINUTES),
                entries.amount("coldest", PowerBounds.COLDEST_CELL),
                entries.amount("hottest", PowerBounds.HOTTEST_CELL));
        if (wanted.coldestCellInForce() >= wanted.hottestCellInForce() && entries.isFine("hottest")) {
            entries.trouble("coldest", "The coldest cells are colder than the hottest ones.");
        }
        return entries.areFine()
                ? Optional.of(Deed.fitting("Rules of the supply", build -> build.withPowerRules(wanted)))
                : Optional.empty();
    }

    private static @Nullable Double reserve(String field, Entries entries) {
        return entries.amount(field, PowerBounds.RESERVE);
    }
}
