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
 * @param undecided there are too many combinations to know it of every concession
 */
public record Relaxations(List<Relaxation> all, boolean noneSuffices, boolean undecided) {

    public Relaxations {
        all = List.copyOf(all);
    }

    /** None when the functions fit, or when that is not known. */
    public static Relaxations of(ChannelProblem problem) {
        if (!Explanation.doesNotFit(problem)) {
            return new Relaxations(List.of(), false, false);
        }
        if (Core.isTooLarge(problem)) {
            return new Relaxations(List.of(), false, true);
        }
        RelaxationSearch search = new RelaxationSearch(problem);
        List<Relaxation> all = search.found().stream()
                .sorted(Comparator.comparing(Relaxation::loss))
                .toList();
        return new Relaxations(all, all.isEmpty() && !search.isUndecided(), search.isUndecided());
    }

    public Optional<Relaxation> byKey(String key) {
        return all.stream().filter(each -> each.key().equals(key)).findFirst();
    }
}
