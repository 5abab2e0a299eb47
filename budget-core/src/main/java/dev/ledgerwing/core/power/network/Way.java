package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A feed as the solver sees it.
 *
 * @param steps its elements taken together, at least one step
 */
record Way(Feed feed, List<PlacedElement> elements, List<Step> steps) {

    Way {
        elements = List.copyOf(elements);
        steps = List.copyOf(steps);
    }

    /** @param highestInputV the highest voltage that ever stands at its beginning */
    static Way of(Feed feed, double conductorC, double highestInputV) {
        List<PlacedElement> elements = new ArrayList<>();
        double inV = highestInputV;
        for (int i = 0; i < feed.elements().size(); i++) {
            PlacedElement placed = PlacedElement.of(
                    new ElementAt(feed.code(), i), feed.elements().get(i), conductorC, inV);
            elements.add(placed);
            inV = placed.idleOutV(inV);
        }
        return of(feed, elements);
    }

    private static Way of(Feed feed, List<PlacedElement> elements) {
        return new Way(feed, elements, steps(elements));
    }

    private static List<Step> steps(List<PlacedElement> elements) {
        List<Step> steps = new ArrayList<>();
        double ohm = 0;
        double forwardV = 0;
        boolean isPending = true;
        for (PlacedElement each : elements) {
            Conversion conversion = each.conversion();
            if (conversion != null) {
                if (isPending && ohm + forwardV > 0) {
                    steps.add(new Step(ohm, forwardV, null));
                }
                steps.add(new Step(0, 0, conversion));
                ohm = 0;
                forwardV = 0;
            }
            ohm += each.ohm();
            forwardV += each.forwardV();
        }
        if (steps.isEmpty() || ohm + forwardV > 0) {
            steps.add(new Step(ohm, forwardV, null));
        }
        return steps;
    }

    /** The same with those elements failed open; null = it carries nothing any more. */
    @Nullable
    Way without(Set<ElementAt> failed) {
        if (failed.isEmpty() || elements.stream().noneMatch(each -> failed.contains(each.at()))) {
            return this;
        }
        if (elements.stream().anyMatch(each -> failed.contains(each.at()) && each.inUse() == 1)) {
            return null;
        }
        return of(
                feed,
                elements.stream()
                        .map(each -> failed.contains(each.at()) ? each.withOneLess() : each)
                        .toList());
    }

    boolean hasRegulator() {
        return elements.stream().anyMatch(each -> each.element().regulator() != null);
    }

    double idleOutV(double inV) {
        double volts = inV;
        for (PlacedElement each : elements) {
            volts = each.idleOutV(volts);
        }
        return volts;
    }
}
