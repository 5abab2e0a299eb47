package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Every rule of placing of a record held against it, each in the flight case where it stands worst: parts sit elsewhere when a case
 * moves or stows them, and a part that stays at home breaks no rule.
 */
record PlacementRules(List<PlacementCheck> checks) {

    /** A rule that was broken already may stay so, but not get worse by more than rounding. */
    private static final double ROUNDING_MM = 1e-6;

    PlacementRules {
        checks = List.copyOf(checks);
    }

    static PlacementRules of(Build build) {
        List<CasePlaces> cases = CasePlaces.flight(build);
        Map<String, PartLine> lines =
                build.lines().stream().collect(Collectors.toUnmodifiableMap(PartLine::id, Function.identity()));
        return new PlacementRules(Stream.concat(
                        build.bays().stream()
                                .flatMap(bay -> bay.holds().stream()
                                        .flatMap(id -> Stream.ofNullable(lines.get(id)))
                                        .map(line -> inside(bay, line, cases))),
                        build.keepApart().stream()
                                .map(rule -> apart(
                                        rule, List.of(named(lines, rule.first()), named(lines, rule.second())), cases)))
                .toList());
    }

    private static PartLine named(Map<String, PartLine> lines, String id) {
        PartLine line = lines.get(id);
        if (line == null) {
            throw new IllegalArgumentException("there is no part “" + id + "”");
        }
        return line;
    }

    private static PlacementCheck inside(Bay bay, PartLine line, List<CasePlaces> cases) {
        List<PlacedIn> measured = cases.stream()
                .filter(each -> each.isAboard(line))
                .map(each -> new PlacedIn(each.loadCase().name(), clearMm(bay, line, each.station(line))))
                .toList();
        return PlacementCheck.inside(bay, line, measured);
    }

    private static @Nullable Double clearMm(Bay bay, PartLine line, @Nullable Station station) {
        return station == null
                ? null
                : Box.of(line.place(), station).stream()
                        .mapToDouble(box -> box.clearInMm(bay))
                        .min()
                        .orElseThrow();
    }

    private static PlacementCheck apart(KeepApart rule, List<PartLine> two, List<CasePlaces> cases) {
        PartLine first = two.get(0);
        PartLine second = two.get(1);
        List<PlacedIn> measured = cases.stream()
                .filter(each -> each.isAboard(first) && each.isAboard(second))
                .map(each -> new PlacedIn(
                        each.loadCase().name(), distanceMm(first, each.station(first), second, each.station(second))))
                .toList();
        return PlacementCheck.apart(rule, two, measured);
    }

    private static @Nullable Double distanceMm(
            PartLine first, @Nullable Station one, PartLine second, @Nullable Station two) {
        if (one == null || two == null) {
            return null;
        }
        List<Box> others = Box.of(second.place(), two);
        return Box.of(first.place(), one).stream()
                .flatMap(box -> others.stream().map(box::distanceMm))
                .min(Double::compare)
                .orElseThrow();
    }

    /** Whether a rule is broken here that was kept before, or is broken by more. */
    boolean breaksMoreThan(PlacementRules before) {
        Map<String, PlacementCheck> was = before.checks.stream()
                .collect(Collectors.toMap(PlacementCheck::key, Function.identity(), (one, other) -> one));
        return checks.stream().anyMatch(now -> now.isBroken() && now.isWorseThan(was.get(now.key()), ROUNDING_MM));
    }
}
