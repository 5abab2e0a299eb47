package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.build.SupplyDeeds;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.CodedRows;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import dev.ledgerwing.web.forms.Typed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The phases of a flight, in their order. */
final class PhasesForm implements PowerForm {

    private static final String LIST = "phase";
    private static final List<String> OF_A_PHASE =
            List.of("code", "name", "minutes", "loadCase", "stretch", "charging");
    private static final String ONLY_ONE = "Only one phase can take up what the battery has left.";

    @Override
    public String view() {
        return "power/phases";
    }

    @Override
    public void show(Build build, Shown fields) {
        for (int i = 0; i < build.phases().size(); i++) {
            Phase phase = build.phases().get(i);
            String row = LIST + "." + i;
            fields.text(row + ".code", phase.code())
                    .text(row + ".name", phase.name())
                    .amount(row + ".minutes", phase.minutes())
                    .tick(row + ".stretch", phase.stretch())
                    .text(row + ".loadCase", phase.loadCase())
                    .ticks(row + ".next", phase.next())
                    .tick(row + ".charging", phase.chargingPossible());
        }
    }

    private static CodedRows<Phase> rows(Typed typed, Build build) {
        return new CodedRows<>(LIST, typed, build.phases());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        CodedRows<Phase> rows = rows(entries.typed(), build);
        List<String> codes = rows.codes();
        Map<String, String> names = new LinkedHashMap<>();
        for (int i = 0; i < codes.size(); i++) {
            if (!codes.get(i).isEmpty()) {
                names.put(codes.get(i), entries.typed().text(rows.row(i) + ".name"));
            }
        }
        String design = build.designCase().name();
        return Map.of(
                "codes", codes,
                "names", names,
                "gone", rows.goneCodes(),
                "going", rows.gone().stream().map(phase -> going(phase, build)).toList(),
                "loadCases", Choices.optional("as designed: " + design, Choices.names(build.loadCases())));
    }

    /** What goes with a phase, in words. */
    private static String going(Phase phase, Build build) {
        List<String> mentions = new ArrayList<>();
        long parts = build.lines().stream()
                .filter(line -> line.electrical().stream()
                        .anyMatch(load -> load.dutyByPhase().containsKey(phase.code())))
                .count();
        if (parts > 0) {
            mentions.add("the duty of " + (parts == 1 ? "1 part" : parts + " parts") + " in it");
        }
        build.phases().stream()
                .filter(other -> other.next().contains(phase.code()))
                .forEach(other -> mentions.add("that it follows " + other.name()));
        SolarDay day = build.power().day();
        if (day != null && phase.code().equals(day.phase())) {
            mentions.add("that the day in the sun is flown in it");
        }
        return "“" + phase.name() + "” goes when you save"
                + (mentions.isEmpty() ? "." : ", and with it " + String.join(", ", mentions) + ".");
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        CodedRows<Phase> rows = rows(entries.typed(), seen);
        List<Phase> wanted = phases(rows, entries, seen);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        List<Phase> all = rows.withOthers(wanted);
        List<String> known = all.stream().map(Phase::code).toList();
        List<Phase> joined = all.stream()
                .map(phase -> phase.withNext(
                        phase.next().stream().filter(known::contains).toList()))
                .toList();
        List<String> gone = rows.goneCodes();
        return Optional.of(Deed.fitting(
                title(rows), build -> SupplyDeeds.withoutPhases(build, gone).withPhases(joined)));
    }

    private static String title(CodedRows<Phase> rows) {
        String gone = String.join(", ", rows.gone().stream().map(Phase::name).toList());
        return gone.isEmpty() ? "Phases edited" : "Phases edited, removed: " + gone;
    }

    private static List<Phase> phases(CodedRows<Phase> rows, Entries entries, Build seen) {
        List<Phase> phases = new ArrayList<>();
        List<String> codes = rows.codes();
        boolean isStretched = false;
        for (int i = 0; i < rows.count(); i++) {
            String row = rows.row(i);
            if (!entries.typed().isBlank(row, OF_A_PHASE)) {
                boolean stretch = entries.typed().isTicked(row + ".stretch");
                if (stretch && isStretched) {
                    entries.trouble(row + ".stretch", ONLY_ONE);
                }
                isStretched |= stretch;
                Phase phase = phase(row, codes.get(i), entries, seen);
                if (phase != null) {
                    phases.add(phase);
                }
            }
        }
        return phases;
    }

    private static @Nullable Phase phase(String row, String code, Entries entries, Build seen) {
        String name = entries.name(row + ".name", "Please name the phase.");
        Double minutes = entries.amount(row + ".minutes", PowerBounds.MINUTES);
        List<String> cases = seen.loadCases().stream().map(LoadCase::code).toList();
        String loadCase = entries.code(row + ".loadCase", cases);
        return entries.areFine()
                ? new Phase(
                        code,
                        name,
                        minutes,
                        entries.typed().isTicked(row + ".stretch"),
                        loadCase,
                        entries.typed().all(row + ".next"),
                        entries.typed().isTicked(row + ".charging"))
                : null;
    }
}
