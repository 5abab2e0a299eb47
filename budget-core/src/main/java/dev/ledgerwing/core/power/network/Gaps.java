package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import java.util.HashSet;
import java.util.Set;

/**
 * Where something is not known, so that a current is only "at least" and a voltage only "at most".
 *
 * @param currents codes of sources and rails through which more may flow than is known
 * @param volts codes of sources and rails whose voltage may be lower than is known
 */
record Gaps(Set<String> currents, Set<String> volts) {

    static Gaps of(PowerNetwork network) {
        Set<String> currents = new HashSet<>();
        network.loads().stream().filter(Gaps::isUnknown).forEach(load -> addRail(load, currents));
        network.rails().stream().map(Rail::code).filter(network::isUnsolved).forEach(currents::add);
        network.feeds().stream()
                .filter(feed -> feed.elements().stream().anyMatch(Gaps::isInputUnknown))
                .forEach(feed -> currents.add(feed.from()));
        Set<String> upstream = new HashSet<>(currents);
        for (PowerSource source : network.sources()) {
            addAbove(network, source.code(), upstream, currents);
        }
        network.rails().forEach(rail -> addAbove(network, rail.code(), upstream, currents));
        return new Gaps(currents, volts(network, currents));
    }

    private static void addRail(RailLoad load, Set<String> currents) {
        String rail = load.load().rail();
        if (rail != null) {
            currents.add(rail);
        }
    }

    private static void addAbove(PowerNetwork network, String node, Set<String> unknown, Set<String> above) {
        if (network.railsReachedFrom(node).stream().anyMatch(unknown::contains)) {
            above.add(node);
        }
    }

    static boolean isUnknown(RailLoad load) {
        ElectricalLoad electrical = load.load();
        return electrical.typicalA() == null || electrical.peakA() == null || load.lacksNominalV();
    }

    /** What a switching regulator draws depends on its efficiency. */
    static boolean isInputUnknown(FeedElement element) {
        Regulator regulator = element.regulator();
        return regulator != null
                && regulator.type() == Regulator.Type.SWITCHING
                && regulator.efficiencyPercent() == null;
    }

    private static Set<String> volts(PowerNetwork network, Set<String> currents) {
        Set<String> begin = new HashSet<>(currents);
        network.sources().stream()
                .filter(Gaps::isSagUnknown)
                .map(PowerSource::code)
                .forEach(begin::add);
        network.feeds().stream()
                .filter(feed -> feed.elements().stream().anyMatch(Gaps::isLossUnknown))
                .map(Feed::to)
                .forEach(begin::add);
        Set<String> volts = new HashSet<>(begin);
        begin.forEach(node -> volts.addAll(network.railsReachedFrom(node)));
        return volts;
    }

    static boolean isSagUnknown(PowerSource source) {
        Pack pack = source.pack();
        return pack != null && pack.cellMilliohm() == null;
    }

    static boolean isLossUnknown(FeedElement element) {
        return element.kind() == FeedElement.Kind.DIODE && element.forwardV() == null;
    }

    /** Whether it surely loses a little, but nobody recorded how much. */
    static boolean isLeftOut(FeedElement element) {
        return element.milliohm() == null
                && switch (element.kind()) {
                    case CONNECTOR, FUSE, BREAKER, SWITCH, SENSOR, MOTOR_CONTROLLER -> true;
                    case WIRE, DIODE, REGULATOR -> false;
                };
    }
}
