package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * How much a concession takes from the pilot, the least first.
 *
 * @param worst 0 when no function suffers, 1 for comfort, 2 for the errand, 3 for the flight
 * @param scope 0 nothing, 1 one phase, 2 several phases, 3 the whole flight
 * @param size of what is left equal: the functions that suffer, or the positions that are added
 */
public record Loss(int worst, int scope, int size) implements Comparable<Loss> {

    private static final Comparator<Loss> ORDER =
            Comparator.comparingInt(Loss::worst).thenComparingInt(Loss::scope).thenComparingInt(Loss::size);

    static Loss ofFunctions(int scope, RadioFunction... functions) {
        int worst = Stream.of(functions).mapToInt(Loss::rank).max().orElse(0);
        return new Loss(worst, scope, Stream.of(functions).mapToInt(Loss::rank).sum());
    }

    private static int rank(RadioFunction function) {
        Criticality criticality = function.criticality();
        return criticality == Criticality.FLIGHT ? 3 : criticality == Criticality.MISSION ? 2 : 1;
    }

    @Override
    public int compareTo(Loss other) {
        return ORDER.compare(this, other);
    }
}
