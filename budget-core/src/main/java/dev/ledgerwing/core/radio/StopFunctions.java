package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The functions that stop a charging: on loss of signal the charging is to be off, so the state wanted then is the one that stops it.
 *
 * @param byFunction what each of them stops: names of solar arrays by the function's code, in the order of the record
 */
record StopFunctions(Build build, Map<String, List<String>> byFunction) {

    static StopFunctions of(Build build) {
        Map<String, List<String>> byFunction = new LinkedHashMap<>();
        for (PowerSource source : build.power().sources()) {
            String stop = source.array() == null ? null : source.array().stopFunction();
            if (stop != null) {
                byFunction.computeIfAbsent(stop, code -> new ArrayList<>()).add(source.name());
            }
        }
        return new StopFunctions(build, byFunction);
    }

    boolean contains(RadioFunction function) {
        return byFunction.containsKey(function.code());
    }

    List<RadioFunction> functions() {
        return build.radio().functions().stream().filter(this::contains).toList();
    }

    List<Phase> chargingPhases() {
        return build.phases().stream().filter(Phase::chargingPossible).toList();
    }

    /** Whether a state stops a charging in a phase in which the sun charges. */
    boolean stopsChargingIn(Phase phase, FunctionState state) {
        return phase.chargingPossible()
                && functions().stream()
                        .anyMatch(function -> function.code().equals(state.function())
                                && state.state().equals(function.onSignalLoss()));
    }
}
