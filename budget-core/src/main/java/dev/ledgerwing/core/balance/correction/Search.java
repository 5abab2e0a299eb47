package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Finds the least amount of a way that lands every flight case. The closed form gives it from the sums as they stand; the record
 * after the change is then recomputed, and what the closed form did not know (another uncertainty, growth, a booking that lies amid the
 * parts) is put into the aims before it is solved again. What is found has been recomputed.
 *
 * @param aims as the record stands now
 */
record Search(Build build, List<Aim> aims) {

    private static final int MOST_ROUNDS = 10;
    private static final Comparator<Integer> LEAST_FIRST =
            Comparator.<Integer>comparingInt(Math::abs).thenComparing(Comparator.naturalOrder());
    /**
     * By how much, as shares of the uncertainty, aims are widened where the closed form sees no room at all: it may be that the change
     * makes the CG surer.
     */
    private static final double[] SLACKS = {0, 0.02, 0.1, 0.3, 0.6, 1.2};

    Optional<Trial> least(Way way) {
        List<Aim> solved = aims;
        Map<Integer, Optional<Trial>> tried = new TreeMap<>(LEAST_FIRST);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            OptionalInt amount = amount(way, solved);
            if (amount.isEmpty() || amount.getAsInt() == 0 || tried.containsKey(amount.getAsInt())) {
                break;
            }
            Optional<Trial> trial = trial(way, amount.getAsInt());
            tried.put(amount.getAsInt(), trial.filter(Trial::lands));
            if (trial.isEmpty()) {
                break;
            }
            solved = learned(solved, way, amount.getAsInt(), trial.get());
        }
        return tried.entrySet().stream()
                .filter(each -> each.getValue().isPresent())
                .findFirst()
                .map(each -> least(way, each.getKey(), each.getValue().orElseThrow()));
    }

    /** What less of it would do as well: one less at first, then by halving what is left down to none. */
    private Trial least(Way way, int amount, Trial landed) {
        int landing = amount;
        int tooLittle = 0;
        Trial least = landed;
        int next = amount - Integer.signum(amount);
        while (next != tooLittle) {
            Optional<Trial> trial =
                    way.allowed().contains(next) ? trial(way, next).filter(Trial::lands) : Optional.empty();
            if (trial.isPresent()) {
                least = trial.get();
                landing = next;
            } else {
                tooLittle = next;
            }
            next = tooLittle + (landing - tooLittle) / 2;
        }
        return least;
    }

    private Optional<Trial> trial(Way way, int amount) {
        return Trial.of(build, aims, List.of(way.step(amount)));
    }

    /** The least that lands; or, where there is hardly any room, what comes nearest to landing. */
    private static OptionalInt amount(Way way, List<Aim> aims) {
        return Arrays.stream(SLACKS)
                .mapToObj(slack ->
                        slack == 0 ? way.landing(aims).wholeNearest(0) : inTheMiddle(way.landing(widened(aims, slack))))
                .filter(OptionalInt::isPresent)
                .findFirst()
                .orElse(OptionalInt.empty());
    }

    private static OptionalInt inTheMiddle(Ranges landing) {
        return landing.isEmpty()
                ? OptionalInt.empty()
                : landing.wholeNearest((landing.least() + landing.greatest()) / 2);
    }

    private static List<Aim> widened(List<Aim> aims, double share) {
        return aims.stream()
                .map(aim -> aim.moved(
                        -share * aim.point().uMm(), share * aim.point().uMm()))
                .toList();
    }

    /** The aims moved so that the closed form agrees with the record as recomputed after {@code amount}. */
    static List<Aim> learned(List<Aim> solved, Way way, int amount, Trial trial) {
        List<Aim> learned = new ArrayList<>();
        for (int i = 0; i < solved.size(); i++) {
            Aim aim = solved.get(i);
            FlightPoint modelled = way.after(aim.point(), i, amount);
            learned.add(learned(aim, modelled, way.bandMovesMm(amount), trial));
        }
        return learned;
    }

    static Aim learned(Aim aim, FlightPoint modelled, double bandMovesMm, Trial trial) {
        return trial.aim(aim.point())
                .map(actual -> {
                    Aim model = aim.withPoint(modelled).moved(bandMovesMm, bandMovesMm);
                    return aim.moved(
                            model.clearOfForwardMm() - actual.clearOfForwardMm(),
                            actual.clearOfAftMm() - model.clearOfAftMm());
                })
                .orElse(aim);
    }
}
