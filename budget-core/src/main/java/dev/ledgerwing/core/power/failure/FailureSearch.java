package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.LoadState;
import dev.ledgerwing.core.power.network.NetworkCase;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.Outage;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.power.network.RailLoad;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Solves the supply again for each failure, and holds it against the supply in order. */
final class FailureSearch {

    private final NetworkStatement statement;
    private final List<Phased> occasions;
    private final List<Rated> rated;
    /** What comes of a feed that carries nothing, by its code: the same whichever of its elements is open. */
    private final Map<String, FailureRow> ofFeeds = new HashMap<>();

    /** One occasion with everything in order. */
    private record Phased(NetworkCase whole, List<Situation> situations, Currents currents) {

        static Phased of(NetworkCase whole) {
            List<Situation> situations = Situation.toLookAt(whole);
            return new Phased(whole, situations, Currents.in(whole, situations.get(situations.size() - 1)));
        }

        /** The failed network of the occasion before serves again where the same sources are aboard. */
        NetworkCase with(Outage outage, @Nullable NetworkCase before) {
            return before != null && before.hasSourcesOf(whole.occasion())
                    ? before.at(whole.occasion())
                    : whole.network().on(whole.occasion(), outage);
        }
    }

    private FailureSearch(NetworkStatement statement) {
        this.statement = statement;
        this.occasions = network().occasions().stream()
                .map(network()::on)
                .map(Phased::of)
                .toList();
        this.rated = Rated.all(statement);
    }

    static FailureSearch of(NetworkStatement statement) {
        return new FailureSearch(statement);
    }

    private PowerNetwork network() {
        return statement.network();
    }

    FailureRow row(Failure failure) {
        return switch (failure.kind()) {
            case SOURCE_OUT -> row(failure, Outage.ofSource(failure.code()), List.of(), List.of());
            case ELEMENT_OPEN -> open(failure, Objects.requireNonNull(failure.at()));
            case RAIL_SHORTED -> shorted(failure, ShortCircuit.at(network(), failure.code()));
        };
    }

    private FailureRow open(Failure failure, ElementAt at) {
        boolean isSingle = network().feed(at.feed()).stream()
                .anyMatch(feed -> feed.elements().get(at.index()).count() == 1);
        return isSingle
                ? ofFeeds.computeIfAbsent(at.feed(), feed -> row(failure, Outage.ofFeed(feed), List.of(), List.of()))
                        .as(failure)
                : row(failure, Outage.ofElement(at), List.of(), List.of());
    }

    private FailureRow shorted(Failure failure, ShortCircuit path) {
        List<PowerSource> dragged = network().sources().stream()
                .filter(source -> path.sources().contains(source.code()))
                .toList();
        return row(failure, path.outage(), path.clearings(), dragged);
    }

    private FailureRow row(Failure failure, Outage outage, List<Clearing> clearings, List<PowerSource> dragged) {
        List<Change> changes = new ArrayList<>();
        List<Overload> overloads = new ArrayList<>();
        NetworkCase failed = null;
        for (Phased each : occasions) {
            failed = each.with(outage, failed);
            List<Change> now = changes(each.situations(), failed);
            changes.addAll(now);
            Currents after = Currents.in(failed, now.get(now.size() - 1).after());
            rated.forEach(one -> one.overload(each.currents(), after).ifPresent(overloads::add));
        }
        List<RailChange> rails = rails(changes);
        Set<Integer> dark = dark(changes);
        return new FailureRow(
                failure,
                rails,
                dark.stream().map(load -> darkLoad(load, changes)).toList(),
                functions(dark),
                unjudged(changes, dark),
                worst(overloads),
                clearings,
                dragged,
                redundant(failure, rails));
    }

    private static List<Change> changes(List<Situation> situations, NetworkCase failed) {
        return situations.stream()
                .map(before -> Change.of(before, before.in(failed)))
                .toList();
    }

    private List<RailChange> rails(List<Change> changes) {
        return network().rails().stream()
                .flatMap(rail -> changes.stream()
                        .flatMap(change -> change.of(rail).stream())
                        .min(Comparator.comparingDouble(RailChange::afterV))
                        .stream())
                .toList();
    }

    private static Set<Integer> dark(List<Change> changes) {
        return changes.stream()
                .flatMap(change -> change.newlyDark().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private DarkLoad darkLoad(int load, List<Change> changes) {
        List<Change> of = changes.stream()
                .filter(change -> change.newlyDark().contains(load))
                .toList();
        double lowestV = of.stream()
                .mapToDouble(change -> change.after().loads().get(load).atLoadV())
                .min()
                .orElse(0);
        return new DarkLoad(
                state(load).load(),
                lowestV,
                of.stream().map(change -> change.before().when()).distinct().toList());
    }

    private LoadState state(int load) {
        return statement.loads().get(load);
    }

    private List<RadioFunction> functions(Set<Integer> dark) {
        Set<String> served = dark.stream()
                .flatMap(load -> state(load).load().line().serves().stream())
                .collect(Collectors.toSet());
        return network().build().radio().functions().stream()
                .filter(function -> served.contains(function.code()))
                .sorted(Comparator.comparing(RadioFunction::criticality))
                .toList();
    }

    /** Of loads that get less than before: those without a least voltage, and those whose voltage is not wholly known. */
    private List<RailLoad> unjudged(List<Change> changes, Set<Integer> dark) {
        Set<Integer> lowered = changes.stream()
                .flatMap(change -> change.lowered().boxed())
                .collect(Collectors.toCollection(TreeSet::new));
        lowered.removeAll(dark);
        return lowered.stream()
                .map(this::state)
                .filter(state -> state.load().minV() == null || !state.isWhole())
                .map(LoadState::load)
                .toList();
    }

    /** One of each thing. */
    private List<Overload> worst(List<Overload> overloads) {
        if (overloads.isEmpty()) {
            return List.of();
        }
        return rated.stream()
                .flatMap(one -> overloads.stream()
                        .filter(each -> each.code().equals(one.code()) && Objects.equals(each.at(), one.at()))
                        .max(Comparator.comparingDouble(each -> each.afterA() / each.ratingA()))
                        .stream())
                .toList();
    }

    private static List<Rail> redundant(Failure failure, List<RailChange> rails) {
        boolean isShort = failure.kind() == Failure.Kind.RAIL_SHORTED;
        return rails.stream()
                .map(RailChange::rail)
                .filter(Rail::redundant)
                .filter(rail -> !isShort || !rail.code().equals(failure.code()))
                .toList();
    }
}
