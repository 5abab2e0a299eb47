package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioDeeds;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SupplyDeeds;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.CodedRows;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import dev.ledgerwing.web.forms.Typed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The functions that the pilot commands and parts serve. What phases ask of them is not touched here. */
final class FunctionsForm implements RadioForm {

    private static final String LIST = "function";

    @Override
    public String view() {
        return "radio/functions";
    }

    @Override
    public void show(Build build, Shown fields) {
        List<RadioFunction> functions = build.radio().functions();
        for (int i = 0; i < functions.size(); i++) {
            FunctionRows.show(LIST + "." + i, functions.get(i), fields);
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
                "kinds", RadioChoices.functionKinds(),
                "criticalities", RadioChoices.criticalities(),
                "places", FunctionRows.places(rows),
                "decoders", RadioChoices.decodedBy(),
                "otherwise", RadioChoices.otherwiseBy());
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
        List<String> mentions = Stream.of(parts, cells, StateMentions.ofFunction(function.code(), build))
                .flatMap(each -> each)
                .toList();
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
        FunctionRows typed = new FunctionRows(rows, entries, seen);
        List<RadioFunction> wanted = typed.functions();
        if (!entries.areFine()) {
            return Optional.empty();
        }
        List<RadioFunction> all = rows.withOthers(wanted);
        List<String> gone = rows.goneCodes();
        String names =
                String.join(", ", rows.gone().stream().map(RadioFunction::name).toList());
        return Optional.of(Deed.fitting(
                names.isEmpty() ? "Functions edited" : "Functions edited, removed: " + names,
                build -> RadioDeeds.withFunctions(SupplyDeeds.withoutFunctions(build, gone), all, typed.renamed())));
    }
}
