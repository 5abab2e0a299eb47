package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;

/**
 * Finds two ways that do together what neither does alone. The first is a move and is tried at every whole millimetre; for each the
 * closed form gives the least of the second. As with a single way, the record after both is recomputed; a pair that must keep apart
 * and does not at its least is not offered.
 */
record Pairs(Build build, List<Aim> aims) {

    private static final int MOST_ROUNDS = 4;
    /** A travel longer than this many millimetres is tried in longer strides. */
    private static final double MOST_TRIED = 2000;

    /** How much of each; {@code grams} whether the second is ballast. */
    private record Amounts(int first, int second, boolean grams) {

        private static final Comparator<Amounts> LEAST = Comparator.comparingInt(Amounts::ballast)
                .thenComparingInt(Amounts::movement)
                .thenComparingInt(Amounts::first);

        int ballast() {
            return grams ? second : 0;
        }

        int movement() {
            return Math.abs(first) + (grams ? 0 : Math.abs(second));
        }
    }

    /** Two ways to go together. */
    record Pair(LinearWay move, LinearWay second) {}

    private record Solved(Pair pair, Amounts amounts) {}

    /** The cheapest that land, so many of them: the closed form puts them in order, and no more are recomputed than it takes. */
    List<Trial> cheapest(List<Pair> pairs, int most) {
        return pairs.stream()
                .flatMap(pair -> solve(pair.move, pair.second, aims).map(amounts -> new Solved(pair, amounts)).stream())
                .sorted(Comparator.comparing(Solved::amounts, Amounts.LEAST))
                .flatMap(solved -> least(solved.pair.move, solved.pair.second).stream())
                .limit(most)
                .toList();
    }

    private Optional<Trial> least(LinearWay move, LinearWay second) {
        List<Aim> solved = aims;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Optional<Amounts> best = solve(move, second, solved);
            if (best.isEmpty()) {
                return Optional.empty();
            }
            Amounts amounts = best.get();
            Optional<Trial> trial =
                    Trial.of(build, aims, List.of(move.step(amounts.first), second.step(amounts.second)));
            if (trial.isEmpty() || trial.get().lands()) {
                return trial;
            }
            solved = learned(solved, move, second, amounts, trial.get());
        }
        return Optional.empty();
    }

    private static Optional<Amounts> solve(LinearWay move, LinearWay second, List<Aim> aims) {
        boolean grams = second.step(1) instanceof AddBallast;
        return move.allowed().all().stream()
                .flatMapToDouble(Pairs::tried)
                .mapToObj(first -> {
                    OptionalInt least = second.landing(moved(aims, move, first)).wholeNearest(0);
                    return least.isEmpty() || first == 0 || least.getAsInt() == 0
                            ? Optional.<Amounts>empty()
                            : Optional.of(new Amounts((int) first, least.getAsInt(), grams));
                })
                .flatMap(Optional::stream)
                .min(Amounts.LEAST);
    }

    private static DoubleStream tried(Ranges.Range range) {
        double from = Math.ceil(range.from());
        double stride = Math.max(1, Math.ceil((range.to() - from) / MOST_TRIED));
        return DoubleStream.iterate(from, mm -> mm <= range.to(), mm -> mm + stride);
    }

    private static List<Aim> moved(List<Aim> aims, LinearWay move, double by) {
        List<Aim> moved = new ArrayList<>();
        for (int i = 0; i < aims.size(); i++) {
            moved.add(aims.get(i).withPoint(move.after(aims.get(i).point(), i, by)));
        }
        return moved;
    }

    private static List<Aim> learned(List<Aim> solved, LinearWay move, LinearWay second, Amounts amounts, Trial trial) {
        List<Aim> learned = new ArrayList<>();
        List<Aim> afterFirst = moved(solved, move, amounts.first);
        for (int i = 0; i < solved.size(); i++) {
            FlightPoint modelled = second.after(afterFirst.get(i).point(), i, amounts.second);
            learned.add(Search.learned(solved.get(i), modelled, 0, trial));
        }
        return learned;
    }
}
