package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.report.drawing.OutputWords;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lists to choose from in the forms of the outputs, each from value to words in the order to be shown. */
final class OutputChoices {

    static final String PLEASE = "please choose";

    private OutputChoices() {}

    /** An empty choice first. */
    static Map<String, String> optional(String empty, Map<String, String> others) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", empty);
        all.putAll(others);
        return all;
    }

    static Map<String, String> names(List<? extends Element> elements) {
        Map<String, String> names = new LinkedHashMap<>();
        elements.forEach(element -> names.put(element.id(), element.name()));
        return names;
    }

    /** All parts, those first that say they need an output. */
    static Map<String, String> driven(Build build) {
        return names(build.lines().stream()
                .sorted(Comparator.comparing((PartLine line) -> line.needs().outputs() == 0))
                .toList());
    }

    static Map<String, String> pulses() {
        Map<String, String> pulses = new LinkedHashMap<>();
        for (PulseKind kind : PulseKind.values()) {
            pulses.put(kind.name(), OutputWords.of(kind));
        }
        return pulses;
    }
}
