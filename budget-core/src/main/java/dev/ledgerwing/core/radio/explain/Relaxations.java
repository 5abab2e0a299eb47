package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every single concession by which everything would fit, the one that takes least from the pilot first.
 * Switches are offered with up to six positions; mixes with more than six levels only where few functions could share.
 *
 * @param noneSuffices the functions do not fit and none of the concessions is enough by itself
 */
public record Relaxations(List<Relaxation> all, boolean noneSuffices) {

    public Relaxations {
        all = List.copyOf(all);
    }

    /** None when the functions fit, or when that is not known. */
    public static Relaxations of(ChannelProblem problem) {
        if (!Explanation.doesNotFit(problem)) {
            return new Relaxations(List.of(), false);
        }
        List<Relaxation> all = new RelaxationSearch(problem)
                .found().stream().sorted(Comparator.comparing(Relaxation::loss)).toList();
        return new Relaxations(all, all.isEmpty());
    }

    public Optional<Relaxation> byKey(String key) {
        return all.stream().filter(each -> each.key().equals(key)).findFirst();
    }
}
