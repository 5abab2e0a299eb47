package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one part draws, from which rails and when, and which functions it serves.
 *
 * @param line id of the part
 */
record LoadsForm(String line) implements PowerForm {

    @Override
    public String view() {
        return "power/part";
    }

    @Override
    public void show(Build build, Shown fields) {
        build.line(line).ifPresent(part -> {
            LoadFields.show(part.electrical(), fields);
            fields.ticks("serves", part.serves());
        });
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Map<String, Object> around = new LinkedHashMap<>();
        Map<String, String> rails = Choices.names(build.power().rails());
        rails.put(LoadFields.ON_NONE, "no rail yet");
        around.put("part", build.line(line).map(PartLine::name).orElse("a part that is not there any more"));
        around.put("quantity", build.line(line).map(PartLine::quantity).orElse(1));
        around.put("rails", rails);
        around.put("draws", PowerChoices.draws());
        around.put("gauges", PowerChoices.gauges());
        around.put("routings", PowerChoices.routings());
        around.put("phases", build.phases());
        around.put("functions", build.radio().functions());
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        List<ElectricalLoad> loads = LoadFields.loads(entries, seen);
        List<String> serves = entries.typed().all("serves");
        Optional<PartLine> part = seen.line(line);
        if (part.isEmpty()) {
            entries.trouble("", "This part is not there any more.");
        }
        return part.filter(there -> entries.areFine())
                .map(there -> Deed.fitting(
                        "What " + there.name() + " draws" + (there.serves().equals(serves) ? "" : " and serves"),
                        build -> build.withLines(Elements.with(
                                build.lines(),
                                build.line(line)
                                        .orElse(there)
                                        .withElectrical(loads)
                                        .withServes(serves)))));
    }
}
