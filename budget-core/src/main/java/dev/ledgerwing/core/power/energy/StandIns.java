package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.Charge;
import dev.ledgerwing.core.power.network.LoadLevel;
import dev.ledgerwing.core.power.network.NetworkCase;
import dev.ledgerwing.core.power.network.NetworkSolution;
import dev.ledgerwing.core.power.network.Occasion;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A flight for each way in which the feeds of redundant rails can stand in for each other: one of them carries its rail through all phases.
 * Everything else is as in the ordinary way.
 */
final class StandIns {

    /** More of them are not looked at. */
    private static final int MOST = 64;

    private final PowerNetwork network;
    private final Map<Occasion, NetworkSolution> normal = new LinkedHashMap<>();
    private final Map<Occasion, List<NetworkSolution>> every = new HashMap<>();
    private final Map<Occasion, NetworkCase> cases = new HashMap<>();

    StandIns(PowerNetwork network) {
        this.network = network;
        for (Occasion occasion : network.occasions()) {
            NetworkCase there = network.on(occasion);
            cases.put(occasion, there);
            normal.put(occasion, there.normal(Charge.NOMINAL, LoadLevel.ENERGY));
            every.put(occasion, there.every(Charge.NOMINAL, LoadLevel.ENERGY));
        }
    }

    /** What is there in the ordinary way, phase by phase. */
    List<NetworkSolution> normal() {
        return List.copyOf(normal.values());
    }

    /** For each choice of carriers of the redundant rails the solutions phase by phase. */
    List<List<NetworkSolution>> flights() {
        return choices().stream().map(this::flight).toList();
    }

    private List<Map<String, Feed>> choices() {
        List<Map<String, Feed>> choices = List.of(Map.of());
        for (Rail rail : redundant()) {
            List<Map<String, Feed>> longer = new ArrayList<>();
            for (Map<String, Feed> choice : choices) {
                for (Feed feed : network.feedsInto(rail.code())) {
                    Map<String, Feed> with = new HashMap<>(choice);
                    with.put(rail.code(), feed);
                    longer.add(with);
                }
            }
            choices = longer.size() > MOST ? choices : longer;
        }
        return choices;
    }

    private List<Rail> redundant() {
        return network.rails().stream()
                .filter(Rail::redundant)
                .filter(rail -> network.feedsInto(rail.code()).size() > 1)
                .toList();
    }

    private List<NetworkSolution> flight(Map<String, Feed> choice) {
        return normal.values().stream()
                .map(ordinary -> every.getOrDefault(ordinary.occasion(), List.of()).stream()
                        .filter(each -> isChosen(each, choice, ordinary))
                        .findFirst()
                        .orElse(ordinary))
                .toList();
    }

    private boolean isChosen(NetworkSolution each, Map<String, Feed> choice, NetworkSolution ordinary) {
        return network.rails().stream()
                .allMatch(rail -> carrier(each, rail).equals(wanted(rail, choice.get(rail.code()), ordinary)));
    }

    /** A feed that cannot carry in a phase, because its source stays at home then, is stood in for as in the ordinary way. */
    private String wanted(Rail rail, @Nullable Feed chosen, NetworkSolution ordinary) {
        return chosen != null && usable(ordinary.occasion(), rail).contains(chosen)
                ? chosen.code()
                : carrier(ordinary, rail);
    }

    private List<Feed> usable(Occasion occasion, Rail rail) {
        NetworkCase there = cases.get(occasion);
        return there == null ? List.of() : there.usableFeeds(rail.code());
    }

    private static String carrier(NetworkSolution solution, Rail rail) {
        @Nullable Feed carrier = solution.carrier(rail.code()).orElse(null);
        return carrier == null ? "" : carrier.code();
    }
}
