package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.web.forms.Choices;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lists to choose from in the forms of the radio, each from value to words in the order to be shown. */
final class RadioChoices {

    static final String NOT_KNOWN = "not known";

    private RadioChoices() {}

    static Map<String, String> onLoss() {
        return Choices.optional(NOT_KNOWN, Choices.of(OnLoss.values(), each -> switch (each) {
            case HOLD -> "keeps the last commands";
            case PRESET -> "goes to its presets";
            case NO_PULSES -> "falls silent";
        }));
    }

    static Map<String, String> actsOnLoss() {
        return Choices.optional(NOT_KNOWN, Choices.of(ActsOnLoss.values(), each -> switch (each) {
            case RECEIVER -> "the receiver, by what it sends";
            case BOARD -> "the flight controller by itself";
        }));
    }

    static Map<String, String> boardLearnsBy() {
        return Choices.optional(NOT_KNOWN, Choices.of(BoardLearnsBy.values(), each -> switch (each) {
            case FLAG -> "the receiver says so in its data";
            case SILENCE -> "nothing comes any more";
            case OUT_OF_RANGE -> "a channel goes where no control takes it";
            case NOTHING -> "nothing tells it";
        }));
    }

    static Map<String, String> controlKinds() {
        return Choices.of(Control.Kind.values(), each -> switch (each) {
            case STICK -> "stick, one axis";
            case SLIDER -> "slider or dial";
            case SWITCH -> "switch";
            case MIXED -> "mix of two switches";
        });
    }

    static Map<String, String> functionKinds() {
        return Choices.of(RadioFunction.Kind.values(), each -> switch (each) {
            case PROPORTIONAL -> "proportional";
            case SWITCHED -> "switched";
        });
    }

    static Map<String, String> criticalities() {
        return Choices.of(Criticality.values(), each -> switch (each) {
            case FLIGHT -> "the flight itself";
            case MISSION -> "the errand";
            case CONVENIENCE -> "comfort";
        });
    }

    static Map<String, String> decodedBy() {
        return Choices.optional(NOT_KNOWN, Choices.of(DecodedBy.values(), each -> switch (each) {
            case TABLE -> "a table of ranges";
            case ONE_STEP -> "one step";
            case SERVO -> "a servo";
        }));
    }

    static Map<String, String> otherwiseBy() {
        return Choices.optional("the radio", Choices.of(OtherwiseBy.values(), each -> switch (each) {
            case DATA_LINK -> "the data link";
            case ON_BOARD -> "the flight controller";
        }));
    }

    /** States, or places of a proportional function, an empty choice first. */
    static Map<String, String> states(String empty, List<String> states) {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", empty);
        states.forEach(state -> choices.put(state, state));
        return choices;
    }

    /** Where a function can be wanted when the signal is lost. */
    static List<String> places(RadioFunction function) {
        return function.kind() == RadioFunction.Kind.SWITCHED ? function.states() : RadioFunction.LOSS_PLACES;
    }
}
