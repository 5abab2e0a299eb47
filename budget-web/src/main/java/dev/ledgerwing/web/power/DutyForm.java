package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How much of each phase the loads on a rail run.
 *
 * @param rail code of the rail
 */
record DutyForm(String rail) implements PowerForm {

    /** A row of the grid: a load with the beginning of the names of its fields. */
    record Row(String group, String name) {}

    @Override
    public String view() {
        return "power/duty";
    }

    @Override
    public void show(Build build, Shown fields) {
        for (PartLine line : build.lines()) {
            for (int i = 0; i < line.electrical().size(); i++) {
                ElectricalLoad load = line.electrical().get(i);
                if (rail.equals(load.rail())) {
                    String group = group(line, i);
                    load.dutyByPhase()
                            .forEach((phase, duty) -> fields.amount(group + "." + phase, LoadFields.percent(duty)));
                }
            }
        }
    }

    private static String group(PartLine line, int load) {
        return "duty-" + line.id() + "-" + load;
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Rail shown = Elements.find(build.power().rails(), rail);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("rail", shown == null ? rail : shown.name());
        around.put("phases", build.phases());
        around.put("loads", rows(build));
        return around;
    }

    private List<Row> rows(Build build) {
        List<Row> rows = new ArrayList<>();
        for (PartLine line : build.lines()) {
            for (int i = 0; i < line.electrical().size(); i++) {
                if (rail.equals(line.electrical().get(i).rail())) {
                    String which = line.electrical().size() == 1 ? "" : ", load " + (i + 1);
                    rows.add(new Row(group(line, i), line.name() + which));
                }
            }
        }
        return rows;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        List<PartLine> lines =
                seen.lines().stream().map(line -> typed(line, seen, entries)).toList();
        Rail shown = Elements.find(seen.power().rails(), rail);
        return entries.areFine()
                ? Optional.of(Deed.fitting(
                        "Duty on rail " + (shown == null ? rail : shown.name()), build -> build.withLines(lines)))
                : Optional.empty();
    }

    private PartLine typed(PartLine line, Build build, Entries entries) {
        List<ElectricalLoad> loads = new ArrayList<>(line.electrical());
        for (int i = 0; i < loads.size(); i++) {
            ElectricalLoad load = loads.get(i);
            if (rail.equals(load.rail())) {
                loads.set(i, load.withDutyByPhase(LoadFields.duty(group(line, i), build, entries)));
            }
        }
        return line.withElectrical(loads);
    }
}
