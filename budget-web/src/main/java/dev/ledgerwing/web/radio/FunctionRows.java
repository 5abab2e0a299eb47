package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.build.StateRenaming;
import dev.ledgerwing.web.forms.CodedRows;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the functions as typed. What is said of a state elsewhere follows it when it gets another name. */
final class FunctionRows {

    private static final List<String> OF_A_FUNCTION = List.of("code", "name", "states", "irreversible", "loss");

    private final CodedRows<RadioFunction> rows;
    private final Entries entries;
    private final Build seen;
    private final Map<String, StateRenaming> renamed = new HashMap<>();

    FunctionRows(CodedRows<RadioFunction> rows, Entries entries, Build seen) {
        this.rows = rows;
        this.entries = entries;
        this.seen = seen;
    }

    static void show(String row, RadioFunction function, Shown fields) {
        DecodedBy decodedBy = function.decodedBy();
        OtherwiseBy otherwiseBy = function.otherwiseBy();
        fields.text(row + ".code", function.code())
                .text(row + ".name", function.name())
                .text(row + ".kind", function.kind().name())
                .text(row + ".states", StateNames.joined(function.states()))
                .text(row + ".criticality", function.criticality().name())
                .tick(row + ".irreversible", function.irreversible())
                .text(row + ".loss", function.onSignalLoss())
                .text(row + ".decoded", decodedBy == null ? "" : decodedBy.name())
                .text(row + ".otherwise", otherwiseBy == null ? "" : otherwiseBy.name());
    }

    /** What each function can be wanted to do when the signal is lost, row by row, as typed. */
    static List<List<String>> places(CodedRows<RadioFunction> rows) {
        List<List<String>> places = new ArrayList<>();
        for (int i = 0; i < rows.count(); i++) {
            List<String> states = StateNames.split(rows.typed().text(rows.row(i) + ".states"));
            boolean switched = rows.typed().text(rows.row(i) + ".kind").equals(Kind.SWITCHED.name());
            places.add(switched ? states : RadioFunction.LOSS_PLACES);
        }
        return places;
    }

    /** How states were renamed, by function. */
    Map<String, StateRenaming> renamed() {
        return renamed;
    }

    List<RadioFunction> functions() {
        List<RadioFunction> functions = new ArrayList<>();
        List<String> codes = rows.codes();
        for (int i = 0; i < rows.count(); i++) {
            if (!entries.typed().isBlank(rows.row(i), OF_A_FUNCTION)) {
                RadioFunction function = function(rows.row(i), codes.get(i));
                if (function != null) {
                    functions.add(function);
                }
            }
        }
        return functions;
    }

    private @Nullable RadioFunction function(String row, String code) {
        RadioFunction was = Elements.find(seen.radio().functions(), code);
        String name = entries.name(row + ".name", "Please name the function.");
        Kind kind = entries.choice(row + ".kind", Kind.values());
        Criticality criticality = entries.choice(row + ".criticality", Criticality.values());
        StateNames states = StateFields.states(row, kind, entries, was);
        StateRenaming renaming = renaming(row, was, kind, states);
        String loss = loss(row + ".loss", kind, states, renaming);
        DecodedBy decodedBy = decodedBy(row + ".decoded", kind, states);
        OtherwiseBy otherwiseBy = entries.choiceOrNone(row + ".otherwise", OtherwiseBy.values());
        if (!entries.areFine()) {
            return null;
        }
        renamed.put(code, renaming);
        return new RadioFunction(
                code,
                name,
                kind,
                states.typed(),
                criticality,
                entries.typed().isTicked(row + ".irreversible"),
                loss,
                decodedBy,
                was == null ? Map.of() : renaming.of(was.demandByPhase()),
                otherwiseBy);
    }

    /** Says at the field what still speaks of a state that is to go. */
    private StateRenaming renaming(String row, @Nullable RadioFunction was, Kind kind, StateNames states) {
        if (was == null) {
            return StateRenaming.NONE;
        }
        if (was.kind() != kind) {
            StateFields.refuseWhatIsMentioned(row + ".kind", was, RadioChoices.places(was), entries, seen);
            return StateRenaming.NONE;
        }
        if (!states.areOnlyRenamed()) {
            StateFields.refuseWhatIsMentioned(row + ".states", was, states.gone(), entries, seen);
        }
        return states.renaming();
    }

    private @Nullable String loss(String field, Kind kind, StateNames states, StateRenaming renaming) {
        String typed = entries.line(field, StateFields.LONGEST_STATE);
        if (typed.isEmpty()) {
            return null;
        }
        List<String> places = kind == Kind.SWITCHED ? states.typed() : RadioFunction.LOSS_PLACES;
        String wanted = renaming.of(typed);
        Optional<String> found = places.stream()
                .filter(wanted::equals)
                .findFirst()
                .or(() -> places.stream().filter(wanted::equalsIgnoreCase).findFirst());
        if (found.isEmpty() && entries.isFine(field)) {
            entries.trouble(
                    field,
                    places.isEmpty()
                            ? "There is no state of this name."
                            : "This is one of: " + String.join(", ", places) + ".");
        }
        return found.orElse(null);
    }

    private @Nullable DecodedBy decodedBy(String field, Kind kind, StateNames states) {
        DecodedBy decodedBy = entries.choiceOrNone(field, DecodedBy.values());
        if (decodedBy == DecodedBy.ONE_STEP && states.typed().size() != 2) {
            entries.trouble(
                    field,
                    kind == Kind.PROPORTIONAL
                            ? "One step tells two states apart, a proportional function has none."
                            : "One step tells two states apart, here there are "
                                    + states.typed().size() + ".");
        }
        return decodedBy;
    }
}
