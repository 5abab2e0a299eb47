package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The rows of what one part draws. */
final class LoadFields {

    static final String LIST = "load";
    /** The choice of no rail; no code looks like that. */
    static final String ON_NONE = "-";

    private LoadFields() {}

    static void show(List<ElectricalLoad> loads, Shown fields) {
        for (int i = 0; i < loads.size(); i++) {
            show(loads.get(i), LIST + "." + i, fields);
        }
    }

    private static void show(ElectricalLoad load, String row, Shown fields) {
        String rail = load.rail();
        fields.text(row + ".rail", rail == null ? ON_NONE : rail)
                .text(row + ".draws", load.draws().name())
                .amount(row + ".typical", load.typicalA())
                .amount(row + ".peak", load.peakA())
                .amount(row + ".min", load.minV())
                .amount(row + ".max", load.maxV())
                .text(row + ".group", load.exclusiveGroup());
        new WireFields(row + ".lead").show(load.lead(), fields);
        load.dutyByPhase().forEach((phase, duty) -> fields.amount(row + ".duty." + phase, percent(duty)));
    }

    /** A share as per cent, without the tail that doubles leave: 0.07 is 7, not 7.000000000000001. */
    static double percent(double share) {
        return Math.rint(share * 1e10) / 1e8;
    }

    static double share(double percent) {
        return Math.rint(percent * 1e8) / 1e10;
    }

    /** The loads as typed; fewer where something is wrong. */
    static List<ElectricalLoad> loads(Entries entries, Build build) {
        List<ElectricalLoad> loads = new ArrayList<>();
        for (int i = 0; i < entries.typed().rows(LIST); i++) {
            ElectricalLoad load = load(LIST + "." + i, entries, build);
            if (load != null) {
                loads.add(load);
            }
        }
        return loads;
    }

    private static @Nullable ElectricalLoad load(String row, Entries entries, Build build) {
        String rail = rail(row + ".rail", entries, build);
        Draws draws = entries.typed().text(row + ".draws").isEmpty()
                ? Draws.CONSTANT_CURRENT
                : entries.choice(row + ".draws", Draws.values());
        Double typicalA = entries.amount(row + ".typical", PowerBounds.TYPICAL);
        Double peakA = entries.amount(row + ".peak", PowerBounds.PEAK);
        if (typicalA != null && peakA != null && typicalA > peakA) {
            entries.trouble(row + ".peak", "The peak is at least the typical current.");
        }
        Double minV = entries.amount(row + ".min", PowerBounds.VOLTAGE);
        Double maxV = entries.amount(row + ".max", PowerBounds.VOLTAGE);
        if (minV != null && maxV != null && minV > maxV) {
            entries.trouble(row + ".min", "The lowest voltage is the smaller of the two.");
        }
        String group = entries.line(row + ".group", PowerBounds.LONGEST_GROUP);
        WireFields lead = new WireFields(row + ".lead");
        WireRun wires = lead.isBlank(entries) ? null : lead.run(entries);
        Map<String, Double> duty = duty(row + ".duty", build, entries);
        return entries.areFine()
                ? new ElectricalLoad(
                        rail, draws, typicalA, peakA, minV, maxV, duty, group.isEmpty() ? null : group, wires)
                : null;
    }

    private static @Nullable String rail(String field, Entries entries, Build build) {
        return entries.typed().text(field).equals(ON_NONE)
                ? null
                : entries.code(field, Choices.names(build.power().rails()).keySet());
    }

    /** How much of each phase it runs; an empty field is a phase that is not named. */
    static Map<String, Double> duty(String group, Build build, Entries entries) {
        Map<String, Double> duty = new TreeMap<>();
        for (Phase phase : build.phases()) {
            Double percent = entries.amount(group + "." + phase.code(), PowerBounds.DUTY);
            if (percent != null) {
                duty.put(phase.code(), share(percent));
            }
        }
        return duty;
    }
}
