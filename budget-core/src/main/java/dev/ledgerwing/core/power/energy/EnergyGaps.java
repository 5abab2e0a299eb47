package dev.ledgerwing.core.power.energy;

import static dev.ledgerwing.core.power.network.PowerWords.quoted;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.power.network.NetworkSolution;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.power.network.RailLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What must be known before anybody can say how long the packs last, in words.
 *
 * @param ordinary what is there in the ordinary way, phase by phase
 */
record EnergyGaps(PowerNetwork network, List<NetworkSolution> ordinary) {

    /** @param drawnFrom packs that give anything on any flight */
    List<String> words(List<PowerSource> drawnFrom) {
        return Stream.of(
                        isCutShort()
                                ? Stream.of("fewer ways to feed the rails, for there are more than are looked at")
                                : Stream.<String>empty(),
                        ofLoads(),
                        network.rails().stream().flatMap(this::ofRail),
                        network.feeds().stream()
                                .flatMap(feed -> feed.elements().stream())
                                .flatMap(EnergyGaps::ofElement),
                        network.build().phases().stream().flatMap(EnergyGaps::ofPhase),
                        drawnFrom.stream().flatMap(EnergyGaps::ofPack))
                .flatMap(each -> each)
                .distinct()
                .toList();
    }

    private boolean isCutShort() {
        return ordinary.stream().anyMatch(NetworkSolution::isCutShort);
    }

    private Stream<String> ofLoads() {
        return network.loads().stream().filter(this::runs).flatMap(load -> {
            Double typicalA = load.typicalA();
            String name = quoted(load.line().name());
            if (typicalA == null) {
                return Stream.of("what " + name + " draws");
            }
            return load.rail() == null && typicalA > 0
                    ? Stream.of("the rail that " + name + " hangs on")
                    : Stream.empty();
        });
    }

    private boolean runs(RailLoad load) {
        return network.occasions().stream().anyMatch(occasion -> occasion.duty(load) > 0);
    }

    private Stream<String> ofRail(Rail rail) {
        boolean goesByWatts = network.loadsOn(rail.code()).stream()
                .anyMatch(load -> load.load().draws() == ElectricalLoad.Draws.CONSTANT_POWER && runs(load));
        List<String> words = new ArrayList<>();
        if (goesByWatts && rail.nominalV() == null) {
            words.add("the nominal voltage of " + quoted(rail.name()));
        }
        if (isDarkWhereSomethingRuns(rail)) {
            words.add(
                    network.isUnsolved(rail.code())
                            ? "a way to " + quoted(rail.name()) + " that is no loop"
                            : "what carries " + quoted(rail.name()));
        }
        return words.stream();
    }

    /** What is dark draws nothing: the packs would seem to last. */
    private boolean isDarkWhereSomethingRuns(Rail rail) {
        return ordinary.stream()
                .filter(solution -> solution.isDark(rail.code()) && !solution.hasCollapsed(rail.code()))
                .anyMatch(solution -> network.loadsOn(rail.code()).stream()
                        .anyMatch(load -> solution.occasion().duty(load) > 0));
    }

    private static Stream<String> ofElement(FeedElement element) {
        Regulator regulator = element.regulator();
        return regulator != null
                        && regulator.type() == Regulator.Type.SWITCHING
                        && regulator.efficiencyPercent() == null
                ? Stream.of("the efficiency of " + quoted(element.name()))
                : Stream.empty();
    }

    private static Stream<String> ofPhase(Phase phase) {
        return phase.stretch() || phase.minutes() != null
                ? Stream.empty()
                : Stream.of("how long " + quoted(phase.name()) + " lasts");
    }

    private static Stream<String> ofPack(PowerSource battery) {
        Pack pack = battery.pack();
        List<String> words = new ArrayList<>();
        if (pack != null && pack.cellCapacityMah() == null) {
            words.add("the capacity of " + quoted(battery.name()));
        }
        if (pack != null && pack.usablePercent() == null) {
            words.add("how much of " + quoted(battery.name()) + " may be used");
        }
        return words.stream();
    }
}
