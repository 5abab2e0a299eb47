package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.RailLoad;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;

/**
 * What one failure does.
 *
 * @param rails that it takes down
 * @param loads that it takes out
 * @param functions lost with them, what the flight hangs on first
 * @param unjudged loads that get less than before, of which it is not known whether it is enough
 * @param overloads what must carry more than it may
 * @param clearings of a short, what opens and stops it
 * @param dragged of a short, sources that it comes to because nothing stops it
 * @param redundant rails that should bear it, and do not; a rail's own short is nothing it could bear
 */
public record FailureRow(
        Failure failure,
        List<RailChange> rails,
        List<DarkLoad> loads,
        List<RadioFunction> functions,
        List<RailLoad> unjudged,
        List<Overload> overloads,
        List<Clearing> clearings,
        List<PowerSource> dragged,
        List<Rail> redundant) {

    public FailureRow {
        rails = List.copyOf(rails);
        loads = List.copyOf(loads);
        functions = List.copyOf(functions);
        unjudged = List.copyOf(unjudged);
        overloads = List.copyOf(overloads);
        clearings = List.copyOf(clearings);
        dragged = List.copyOf(dragged);
        redundant = List.copyOf(redundant);
    }

    /** The same of another failure that does the same. */
    FailureRow as(Failure other) {
        return new FailureRow(other, rails, loads, functions, unjudged, overloads, clearings, dragged, redundant);
    }

    public boolean losesFlight() {
        return loses(Criticality.FLIGHT);
    }

    public boolean loses(Criticality criticality) {
        return functions.stream().anyMatch(function -> function.criticality() == criticality);
    }

    /** A redundant rail lost breaks; a function lost that the flight hangs on is tight; with a load that cannot be judged, not known. */
    public Verdict verdict() {
        return Stream.of(
                        redundant.isEmpty() ? Verdict.HOLDS : Verdict.BREAKS,
                        unjudged.isEmpty() ? Verdict.HOLDS : Verdict.UNKNOWN,
                        losesFlight() ? Verdict.TIGHT : Verdict.HOLDS)
                .reduce(Verdict::worseOf)
                .orElseThrow();
    }

    /** 0 for the gravest: a function lost that the flight hangs on, then the errand, then comfort, then any load, then nothing. */
    int rank() {
        if (functions.isEmpty()) {
            return loads.isEmpty() ? 4 : 3;
        }
        return switch (functions.get(0).criticality()) {
            case FLIGHT -> 0;
            case MISSION -> 1;
            case CONVENIENCE -> 2;
        };
    }
}
