package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.correction.Pairs.Pair;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds what puts the balance right: every flight case, at basic and at predicted mass, must land between its limits moved inward, and
 * no part where a bay or a rule forbids it. Every offer has been recomputed from the changed record.
 */
public final class CorrectionFinder {

    /** Places for ballast, parts with another mass, and pairs: so many of each are offered. */
    private static final int OF_EACH_KIND = 3;

    /** Pairs are made of so many parts, those whose moving does most. */
    private static final int MOST_MOVERS = 8;

    private final Build build;
    private final List<Aim> aims;
    private final Ways ways;
    private final Search search;

    private CorrectionFinder(BalanceStatement statement, List<Aim> aims) {
        this.build = statement.build();
        this.aims = aims;
        this.ways = new Ways(build, new Effects(statement, aims));
        this.search = new Search(build, aims);
    }

    public static Corrections of(Build build) {
        return of(BalanceStatement.of(build));
    }

    /** Corrections of the statement's own record. */
    public static Corrections of(BalanceStatement statement) {
        List<Aim> aims = Aim.of(statement);
        boolean wrong = aims.stream().anyMatch(Aim::isWrong) && !aims.stream().allMatch(Aim::isMet);
        return new Corrections(statement, aims, wrong ? new CorrectionFinder(statement, aims).offers() : List.of());
    }

    private List<Correction> offers() {
        List<LinearWay> moves = ways.moves();
        List<Correction> moved = least(moves);
        List<Correction> ballasted = cheapestOf(least(ways.ballast()));
        return Stream.of(
                        moved.stream(),
                        ballasted.stream(),
                        pairs(moves, moved, ballasted).stream(),
                        least(ways.drawing()).stream(),
                        withoutOnePart(),
                        otherMasses())
                .flatMap(Function.identity())
                .sorted(Correction.CHEAPEST_FIRST)
                .toList();
    }

    private List<Correction> least(List<? extends Way> some) {
        return some.stream()
                .flatMap(way -> search.least(way).stream())
                .map(Correction::of)
                .toList();
    }

    private static List<Correction> cheapestOf(List<Correction> some) {
        return some.stream()
                .sorted(Correction.CHEAPEST_FIRST)
                .limit(OF_EACH_KIND)
                .toList();
    }

    /** Leaving a part out has no amount: it does or it does not. */
    private Stream<Correction> withoutOnePart() {
        return build.lines().stream()
                .flatMap(line -> leavingOut(line).stream())
                .flatMap(step -> Trial.of(build, aims, List.of(step)).stream())
                .filter(Trial::lands)
                .map(Correction::of);
    }

    private static Optional<CorrectionStep> leavingOut(PartLine line) {
        return switch (line.category()) {
            case BALLAST -> Optional.of(new TakeOutBallast(line));
            case PAYLOAD -> Optional.of(new LeaveAtHome(line));
            default -> Optional.empty();
        };
    }

    /** The parts that need the least other mass. */
    private Stream<Correction> otherMasses() {
        return ways.otherMasses()
                .filter(way -> !way.landing(aims).isEmpty())
                .sorted(Comparator.comparingInt(this::leastAmount))
                .limit(OF_EACH_KIND)
                .flatMap(way -> search.least(way).stream())
                .map(Correction::of);
    }

    private int leastAmount(LinearWay way) {
        return Math.abs(way.landing(aims).wholeNearest(0).orElse(Integer.MAX_VALUE));
    }

    /**
     * Two moves where no single one is enough; a move with ballast where that saves ballast, or where neither is enough alone.
     */
    private List<Correction> pairs(List<LinearWay> moves, List<Correction> moved, List<Correction> ballasted) {
        if (!moved.isEmpty()) {
            return List.of();
        }
        List<LinearWay> movers = moves.stream()
                .sorted(Comparator.comparingDouble(LinearWay::reachGMm).reversed())
                .limit(MOST_MOVERS)
                .toList();
        List<Correction> free = cheapest(IntStream.range(0, movers.size())
                .boxed()
                .flatMap(
                        i -> movers.subList(i + 1, movers.size()).stream().map(other -> new Pair(movers.get(i), other)))
                .toList());
        return free.isEmpty() ? withBallast(movers, ballasted) : free;
    }

    private List<Correction> withBallast(List<LinearWay> moves, List<Correction> ballasted) {
        Mass alone =
                ballasted.stream().map(Correction::cost).min(Mass::compareTo).orElse(new Mass(Long.MAX_VALUE));
        List<LinearWay> ballast = ways.ballast();
        return cheapest(moves.stream()
                        .flatMap(move -> ballast.stream().map(added -> new Pair(move, added)))
                        .toList())
                .stream()
                .filter(pair -> pair.cost().compareTo(alone) < 0)
                .toList();
    }

    private List<Correction> cheapest(List<Pair> pairs) {
        return new Pairs(build, aims)
                .cheapest(pairs, OF_EACH_KIND).stream().map(Correction::of).toList();
    }
}
