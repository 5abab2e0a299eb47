package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.SolarArray;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A feed that solar cells charge through. At worst it carries their short-circuit current, and behind a tracker, wherever that sits, their
 * greatest power at the lowest voltage that it charges: I = efficiency P / V.
 */
record SolarFeed(PowerNetwork network, Feed feed) {

    Stream<ElementLoad> elements() {
        @Nullable Double amperes = chargeA();
        List<ElementLoad> loads = new ArrayList<>();
        for (int i = 0; i < feed.elements().size(); i++) {
            loads.add(load(new ElementAt(feed.code(), i), feed.elements().get(i), amperes));
        }
        return loads.stream();
    }

    private ElementLoad load(ElementAt at, FeedElement element, @Nullable Double amperes) {
        double ofOneA = amperes == null ? 0 : amperes * Shares.ofOne(element, element.count());
        PlacedElement placed =
                PlacedElement.of(at, element, network.build().power().rules().wireCInForce(), openV());
        double dropV = amperes == null ? 0 : placed.forwardV() + amperes * placed.ohm();
        return new ElementLoad(
                feed,
                at,
                ofOneA,
                ofOneA,
                ElementRating.of(element, openV()),
                network.build().power().rules().reserve(element.kind()),
                amperes != null,
                amperes != null,
                dropV,
                amperes == null ? 0 : dropV * amperes,
                0,
                openV(),
                0,
                "in full sun");
    }

    private @Nullable SolarArray array() {
        return network.source(feed.from()).map(source -> source.array()).orElse(null);
    }

    private double openV() {
        SolarArray array = array();
        Double openV = array == null ? null : array.openCircuitV();
        return openV == null ? 0 : openV;
    }

    private @Nullable Double chargeA() {
        SolarArray array = array();
        if (array == null || array.shortCircuitA() == null) {
            return null;
        }
        return array.connection() == SolarArray.Connection.DIRECT
                ? array.shortCircuitA()
                : behindTracker(array, array.shortCircuitA());
    }

    private @Nullable Double behindTracker(SolarArray array, double shortA) {
        Double watts = array.maxPowerW();
        double lowestV = network.models().stream()
                .filter(SourceModel::gives)
                .filter(model -> network.railsReachedFrom(model.source().code()).contains(feed.to()))
                .mapToDouble(model -> model.openV(Charge.EMPTY))
                .min()
                .orElse(0);
        if (watts == null || lowestV == 0) {
            return null;
        }
        Double efficiency = array.trackerEfficiencyPercent();
        return Math.max(shortA, watts * (efficiency == null ? 1 : efficiency / 100) / lowestV);
    }
}
