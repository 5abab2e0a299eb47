package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.web.forms.ExtraFields;
import dev.ledgerwing.web.forms.PartChoice;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the form of a weighing offers to choose from. */
final class WeighInChoices {

    private WeighInChoices() {}

    static Map<String, Object> of(Build build) {
        Map<String, String> assemblies = new LinkedHashMap<>();
        assemblies.put("", "the whole airframe");
        build.assemblies().forEach(each -> assemblies.put(each.code(), each.name()));
        Map<String, String> cases = new LinkedHashMap<>();
        build.loadCases().forEach(each -> cases.put(each.code(), each.name()));
        return Map.of(
                "assemblies", assemblies,
                "cases", cases,
                "bases", ExtraFields.bases(),
                "fitted", PartChoice.groups(build, line -> line.state() == FitState.FITTED),
                "datum", build.airframe().datum());
    }
}
