package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What each phase asks of each switched function. Cells that were not touched stay as they are.
 *
 * @param phase the one phase to be shown; all of them where it is null or none of the record
 */
record DemandsForm(@Nullable String phase) implements RadioForm {

    /** The phases that a form showed: of others it says nothing. */
    private static final String PHASES = "phase";

    /** @param first where every function has to say what is safe */
    record Column(String code, String name, boolean first) {}

    /** @param note how it is commanded if not by radio */
    record Row(String code, String name, List<String> states, String note) {}

    @Override
    public String view() {
        return "radio/demands";
    }

    static String must(String function, String phase) {
        return "must-" + function + "." + phase;
    }

    static String may(String function, String phase) {
        return "may-" + function + "." + phase;
    }

    @Override
    public void show(Build build, Shown fields) {
        List<String> all = build.phases().stream().map(Phase::code).toList();
        fields.ticks(PHASES, phase != null && all.contains(phase) ? List.of(phase) : all);
        for (RadioFunction function : build.radio().functions()) {
            function.demandByPhase()
                    .forEach((at, demand) -> fields.ticks(must(function.code(), at), demand.mustSelect())
                            .ticks(may(function.code(), at), demand.mayHave()));
        }
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        List<String> shown = entries.typed().all(PHASES);
        List<Phase> phases = build.phases();
        List<Column> columns = phases.stream()
                .filter(each -> shown.contains(each.code()))
                .map(each -> new Column(each.code(), each.name(), each.equals(phases.get(0))))
                .toList();
        return Map.of(
                "phases", phases,
                "columns", columns,
                "rows",
                        build.radio().functions().stream()
                                .filter(DemandsForm::isSwitched)
                                .map(DemandsForm::row)
                                .toList());
    }

    private static boolean isSwitched(RadioFunction function) {
        return function.kind() == RadioFunction.Kind.SWITCHED;
    }

    private static Row row(RadioFunction function) {
        RadioFunction.OtherwiseBy otherwise = function.otherwiseBy();
        String note = otherwise == null
                ? ""
                : "by " + RadioChoices.otherwiseBy().get(otherwise.name()) + ", needs no channel";
        return new Row(function.code(), function.name(), function.states(), note);
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        List<RadioFunction> functions = seen.radio().functions().stream()
                .map(each -> isSwitched(each) ? typed(each, entries, seen) : each)
                .toList();
        if (!entries.areFine()) {
            return Optional.empty();
        }
        List<String> changed = functions.stream()
                .filter(each -> !seen.radio().functions().contains(each))
                .map(RadioFunction::name)
                .toList();
        return Optional.of(Deed.fitting(
                "Demands" + (changed.isEmpty() ? "" : " on " + String.join(", ", changed)),
                build -> build.withFunctions(functions)));
    }

    private static RadioFunction typed(RadioFunction function, Entries entries, Build seen) {
        Map<String, Demand> demands = new HashMap<>(function.demandByPhase());
        for (Phase at : seen.phases()) {
            if (entries.typed().isTicked(PHASES, at.code())) {
                DemandCell cell = DemandCell.typed(function, at.code(), entries);
                if (entries.areFine() && !cell.says(function.demandIn(at.code()))) {
                    demands.put(at.code(), cell.demand());
                    demands.values().removeIf(Demand.OPEN::equals);
                }
            }
        }
        return function.withDemandByPhase(demands);
    }
}
