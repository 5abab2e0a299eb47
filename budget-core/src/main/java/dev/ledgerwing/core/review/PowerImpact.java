package dev.ledgerwing.core.review;

import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says how much more, or less, the feeds of the heaviest loaded rail carry, of those whose load has changed. */
record PowerImpact(BuildReview before, BuildReview after) {

    /** A rail whose load can be told before and after. */
    private record Moved(RailState rail, double beforePercent, double afterPercent) {

        boolean shows() {
            return !Figures.number(beforePercent, 0).equals(Figures.number(afterPercent, 0));
        }
    }

    /** Empty where no rail's load has changed by as much as shows. */
    static Optional<ImpactPart> of(BuildReview before, BuildReview after) {
        return new PowerImpact(before, after).part();
    }

    private Optional<ImpactPart> part() {
        return after.power().network().rails().stream()
                .flatMap(rail -> moved(rail).stream())
                .filter(Moved::shows)
                .max(Comparator.comparingDouble(Moved::afterPercent))
                .map(moved -> new ImpactPart(sentence(moved), verdict(moved.rail())));
    }

    private Optional<Moved> moved(RailState rail) {
        Double now = rail.loadPercent();
        Double then = before.power()
                .network()
                .rail(rail.rail().code())
                .map(RailState::loadPercent)
                .orElse(null);
        return now == null || then == null ? Optional.empty() : Optional.of(new Moved(rail, then, now));
    }

    /** {@code Avionics, 5 V: 62 → 71 %.} */
    private static String sentence(Moved moved) {
        return moved.rail().rail().name() + ": " + Figures.number(moved.beforePercent(), 0) + " → "
                + Figures.number(moved.afterPercent(), 0) + "\u2009%.";
    }

    private static @Nullable Verdict verdict(RailState rail) {
        return rail.heaviest() == null ? null : rail.heaviest().verdict();
    }
}
