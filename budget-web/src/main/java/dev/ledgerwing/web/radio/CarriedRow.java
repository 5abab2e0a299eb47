package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Typed;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A function on a channel as it is typed so far.
 *
 * @param row the beginning of the names of its fields
 * @param said how many positions have been given a state
 */
record CarriedRow(String row, @Nullable RadioFunction function, int said) {

    static String group(String channel, int index) {
        return channel + ".carried." + index;
    }

    static CarriedRow of(String row, Typed typed, Build build) {
        int said = 0;
        for (int i = 0; i < Control.MOST_POSITIONS; i++) {
            said = typed.text(row + ".state." + i).isEmpty() ? said : i + 1;
        }
        return new CarriedRow(row, Elements.find(build.radio().functions(), typed.text(row + ".function")), said);
    }

    public String name() {
        return function == null ? "the function" : function.name();
    }

    public boolean isSwitched() {
        return function != null && function.kind() == RadioFunction.Kind.SWITCHED;
    }

    public Map<String, String> states() {
        return RadioChoices.states("please choose", function == null ? List.of() : function.states());
    }

    public Map<String, String> presets() {
        return RadioChoices.states("no preset", function == null ? List.of() : RadioChoices.places(function));
    }
}
