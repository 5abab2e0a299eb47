package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.power.network.Charge;
import dev.ledgerwing.core.power.network.LoadFlow;
import dev.ledgerwing.core.power.network.LoadLevel;
import dev.ledgerwing.core.power.network.NetworkCase;
import dev.ledgerwing.core.power.network.NetworkSolution;
import java.util.ArrayList;
import java.util.List;

/**
 * One state of the supply, solved.
 *
 * @param loads how each load stands, in the order of the record
 */
record Situation(NetworkSolution solution, List<LoadFlow> loads) {

    static Situation of(NetworkCase occasion, Charge charge, LoadLevel level) {
        NetworkSolution solution = occasion.normal(charge, level);
        return new Situation(solution, solution.loads());
    }

    /** The same with something out of order. */
    Situation in(NetworkCase failed) {
        return of(failed, solution.charge(), solution.level());
    }

    /**
     * The states of one occasion to look at. With empty packs and peak loads every voltage is lowest, so a load that is in order then is so
     * in every other state. Where one is not, states in which it is are looked at too: a failure takes nothing from what is dark
     * already. The lowest is the last.
     */
    static List<Situation> toLookAt(NetworkCase occasion) {
        Situation worst = of(occasion, Charge.EMPTY, LoadLevel.PEAK);
        if (worst.dark() == 0) {
            return List.of(worst);
        }
        List<Situation> all = new ArrayList<>();
        for (Charge charge : Charge.values()) {
            all.add(of(occasion, charge, LoadLevel.CONTINUOUS));
            all.add(of(occasion, charge, LoadLevel.PEAK));
        }
        all.removeIf(each -> each.dark() == worst.dark());
        all.add(worst);
        return all;
    }

    private long dark() {
        return loads.stream().filter(LoadFlow::isDark).count();
    }

    String when() {
        return solution.occasion().name();
    }
}
