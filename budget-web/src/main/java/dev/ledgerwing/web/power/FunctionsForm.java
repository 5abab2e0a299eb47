package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SupplyDeeds;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import dev.ledgerwing.web.forms.Typed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The functions that parts can serve: what is lost when their supply dies. */
final class FunctionsForm implements PowerForm {

    private static final String LIST = "function";
    private static final List<String> OF_A_FUNCTION = List.of("code", "name", "states", "irreversible");
    private static final int LONGEST_STATES = 500;
    private static final int LONGEST_STATE = 200;

    @Override
    public String view() {
        return "power/functions";
    }

    @Override
    public void show(Build build, Shown fields) {
        List<RadioFunction> functions = build.radio().functions();
        for (int i = 0; i < functions.size(); i++) {
            RadioFunction function = functions.get(i);
            String row = LIST + "." + i;
            fields.text(row + ".code", function.code())
                    .text(row + ".name", function.name())
                    .text(row + ".kind", function.kind().name())
                    .text(row + ".states", String.join(", ", function.states()))
                    .text(row + ".criticality", function.criticality().name())
                    .tick(row + ".irreversible", function.irreversible());
        }
    }

    private static CodedRows<RadioFunction> rows(Typed typed, Build build) {
        return new CodedRows<>(LIST, typed, build.radio().functions());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        CodedRows<RadioFunction> rows = rows(entries.typed(), build);
        return Map.of(
                "codes", rows.codes(),
                "gone", rows.goneCodes(),
                "going",
                        rows.gone().stream()
                                .map(function -> going(function, build))
                                .toList(),
                "kinds", PowerChoices.functionKinds(),
                "criticalities", PowerChoices.criticalities());
    }

    /** What goes with a function, in words. */
    private static String going(RadioFunction function, Build build) {
        Stream<String> parts = build.lines().stream()
                .filter(line -> line.serves().contains(function.code()))
                .map(PartLine::name)
                .map(name -> "that " + name + " serves it");
        Stream<String> cells = build.power().sources().stream()
                .filter(source -> isStoppedBy(source, function))
                .map(source -> "that it can stop the charging from " + source.name());
        List<String> mentions = Stream.concat(parts, cells).toList();
        return "“" + function.name() + "” goes when you save"
                + (mentions.isEmpty() ? "." : ", and with it " + String.join(", ", mentions) + ".");
    }

    private static boolean isStoppedBy(PowerSource source, RadioFunction function) {
        SolarArray array = source.array();
        return array != null && function.code().equals(array.stopFunction());
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        CodedRows<RadioFunction> rows = rows(entries.typed(), seen);
        List<RadioFunction> wanted = functions(rows, entries);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        List<RadioFunction> all = rows.withOthers(wanted);
        List<String> gone = rows.goneCodes();
        String names =
                String.join(", ", rows.gone().stream().map(RadioFunction::name).toList());
        return Optional.of(Deed.fitting(
                names.isEmpty() ? "Functions edited" : "Functions edited, removed: " + names,
                build -> SupplyDeeds.withoutFunctions(build, gone).withFunctions(all)));
    }

    private static List<RadioFunction> functions(CodedRows<RadioFunction> rows, Entries entries) {
        List<RadioFunction> functions = new ArrayList<>();
        List<String> codes = rows.codes();
        for (int i = 0; i < rows.count(); i++) {
            if (!entries.typed().isBlank(rows.row(i), OF_A_FUNCTION)) {
                RadioFunction function = function(rows.row(i), codes.get(i), entries);
                if (function != null) {
                    functions.add(function);
                }
            }
        }
        return functions;
    }

    private static @Nullable RadioFunction function(String row, String code, Entries entries) {
        String name = entries.name(row + ".name", "Please name the function.");
        Kind kind = entries.choice(row + ".kind", Kind.values());
        Criticality criticality = entries.choice(row + ".criticality", Criticality.values());
        List<String> states = states(row + ".states", kind, entries);
        return entries.areFine()
                ? new RadioFunction(
                        code, name, kind, states, criticality, entries.typed().isTicked(row + ".irreversible"))
                : null;
    }

    private static List<String> states(String field, Kind kind, Entries entries) {
        List<String> states = Arrays.stream(entries.line(field, LONGEST_STATES).split(",", -1))
                .map(String::strip)
                .filter(state -> !state.isEmpty())
                .toList();
        if (kind == Kind.PROPORTIONAL && !states.isEmpty()) {
            entries.trouble(field, "A proportional function has no states: leave this empty, or make it switched.");
        } else if (kind == Kind.SWITCHED && states.size() < 2) {
            entries.trouble(field, "Please name its states in order, two at least: off, on.");
        } else if (new HashSet<>(states).size() < states.size()) {
            entries.trouble(field, "Two states have the same name.");
        } else if (states.stream().anyMatch(state -> state.length() > LONGEST_STATE)) {
            entries.trouble(field, "The name of a state has at most " + LONGEST_STATE + " characters.");
        }
        return states;
    }
}
