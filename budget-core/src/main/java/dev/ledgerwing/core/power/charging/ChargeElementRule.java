package dev.ledgerwing.core.power.charging;

import static dev.ledgerwing.core.power.network.PowerWords.amperes;
import static dev.ledgerwing.core.power.network.PowerWords.quoted;
import static dev.ledgerwing.core.power.network.PowerWords.word;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.power.network.ElementFlow;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.stream.Stream;

/**
 * The elements between a pack and the rail where the sun's current arrives, against the most that flows back through them. The feed of the
 * cells themselves is judged with the network; nothing is said of what holds, nor again of a rating that is not known.
 */
record ChargeElementRule(ChargeWay way, NetworkStatement network) {

    Stream<Finding> findings() {
        Double worstA = way.worstA();
        return worstA == null // said of the pack already
                ? Stream.empty()
                : way.feeds().stream()
                        .filter(feed -> !feed.from().equals(way.cells().code()))
                        .flatMap(feed -> network.elementsOf(feed.code()).stream())
                        .flatMap(element -> finding(element, worstA));
    }

    private Stream<Finding> finding(ElementLoad load, double worstA) {
        Double ratingA = load.rating().continuousA();
        FeedElement element = load.element();
        double ofOneA = new ElementFlow(load.at(), element, element.count(), 0, worstA, 0, worstA).ofOneA();
        if (ratingA == null || ofOneA <= ratingA * (1 - load.reservePercent() / 100)) {
            return Stream.empty();
        }
        boolean isOver = ofOneA > ratingA;
        String flows = "When the sun charges " + quoted(way.battery().name()) + " with everything else off, up to "
                + amperes(ofOneA) + " flow back through the " + word(element.kind()) + " " + quoted(element.name())
                + " of "
                + quoted(load.feed().name());
        return Stream.of(ChargeAgainst.most(ChargingFindings.ELEMENT, subject(load.feed(), element), ofOneA, ratingA)
                .inA()
                .finding(isOver ? Verdict.BREAKS : Verdict.TIGHT, flows + held(load, ratingA, isOver)));
    }

    private static String held(ElementLoad load, double ratingA, boolean isOver) {
        return isOver
                ? ", more than the " + amperes(ratingA) + " it may carry."
                : ", of the " + amperes(ratingA) + " it may carry: less than " + Figures.percent(load.reservePercent())
                        + " is left.";
    }

    private static String subject(Feed feed, FeedElement element) {
        return feed.name() + ": " + element.name();
    }
}
