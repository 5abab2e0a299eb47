package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Finds the least amount of a way that lands every flight case. The closed form gives it from the sums as they stand; the record
 * after the change is then recomputed, and what the closed form did not know (another uncertainty, growth, a booking that lies amid the
 * parts) is put into the aims before it is solved again. What is found has been recomputed.
 *
 * @param aims as the record stands now
 */
record Search(Build build, List<Aim> aims) {

    private static final int MOST_ROUNDS = 5;
    private static final int MOST_STEPS_BACK = 5;
    /** A first try where the closed form, with the uncertainty of now, sees no room at all: most change little of it. */
    private static final double SLACK_OF_UNCERTAINTY = 0.5;

    Optional<Trial> least(Way way) {
        List<Aim> solved = aims;
        Ranges landing = way.landing(solved);
        if (landing.isEmpty()) {
            solved = widened();
            landing = way.landing(solved);
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            OptionalInt amount = landing.wholeNearest(0);
            if (amount.isEmpty() || amount.getAsInt() == 0) {
                return Optional.empty();
            }
            Optional<Trial> trial = trial(way, amount.getAsInt());
            if (trial.isEmpty() || trial.get().lands()) {
                return trial.map(landed -> nearest(way, amount.getAsInt(), landed));
            }
            solved = learned(solved, way, amount.getAsInt(), trial.get());
            landing = way.landing(solved);
        }
        return Optional.empty();
    }

    private Optional<Trial> trial(Way way, int amount) {
        return Trial.of(build, List.of(way.step(amount)));
    }

    /** What less of it would do as well: the closed form was on the safe side. */
    private Trial nearest(Way way, int amount, Trial landed) {
        Trial least = landed;
        int towardsNone = -Integer.signum(amount);
        for (int step = 1; step <= MOST_STEPS_BACK; step++) {
            int less = amount + step * towardsNone;
            if (less == 0 || !way.allowed().contains(less)) {
                return least;
            }
            Optional<Trial> trial = trial(way, less).filter(Trial::lands);
            if (trial.isEmpty()) {
                return least;
            }
            least = trial.get();
        }
        return least;
    }

    private List<Aim> widened() {
        return aims.stream()
                .map(aim -> {
                    double by = SLACK_OF_UNCERTAINTY * aim.point().uMm() + 1;
                    return aim.moved(-by, by);
                })
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
