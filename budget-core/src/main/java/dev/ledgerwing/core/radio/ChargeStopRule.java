package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.RadioWords.and;
import static dev.ledgerwing.core.radio.RadioWords.quoted;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A function that stops a charging: what it does on loss of signal is to be said, and the pilot is to be able to stop the charging in
 * every phase in which the sun can charge. Whether there is such a function, and a guard that works by itself, the power budget judges.
 */
record ChargeStopRule(Build build) {

    Stream<Finding> findings() {
        StopFunctions stops = StopFunctions.of(build);
        return stops.functions().stream().flatMap(function -> finding(function, stops.chargingPhases()).stream());
    }

    private Optional<Finding> finding(RadioFunction function, List<Phase> charging) {
        Judged judged = Judged.of(RadioFindings.CHARGE_STOP, function.name());
        String stop = function.onSignalLoss();
        if (stop == null) {
            return Optional.of(
                    judged.finding(
                            Verdict.UNKNOWN,
                            "What " + quoted(function.name())
                                    + " is to do on loss of signal is not said: it stops a charging, which is to be off then."));
        }
        List<String> unasked = charging.stream()
                .filter(phase -> function.kind() == Kind.SWITCHED
                        && function.needsChannel()
                        && !function.demandIn(phase.code()).mustSelect().contains(stop))
                .map(Phase::name)
                .toList();
        return unasked.isEmpty()
                ? Optional.empty()
                : Optional.of(judged.finding(
                        Verdict.TIGHT,
                        "In " + and(unasked) + " the sun can charge, but that the pilot must be able to switch "
                                + quoted(function.name()) + " to " + stop + " then is not asked."));
    }
}
