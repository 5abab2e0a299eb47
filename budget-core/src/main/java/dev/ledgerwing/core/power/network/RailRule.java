package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.power.network.RailState.Leg;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whether every rail stays within what its loads bear, also with one feed carrying it alone. */
record RailRule(NetworkStatement statement) {

    static final String LOW = "power.low-voltage";
    static final String HIGH = "power.high-voltage";
    static final String ALONE = "power.redundant";
    static final String LIMITS = "power.voltage-limits";
    static final String RAIL = "power.rail";
    static final String OWN_LIMITS = "power.rail-limits";

    Stream<Finding> findings() {
        return statement.rails().stream()
                .filter(rail -> rail.isSolved() && rail.isFed())
                .flatMap(this::of);
    }

    private Stream<Finding> of(RailState rail) {
        List<Finding> findings = new ArrayList<>();
        Stream.of(tooLow(rail), tooHigh(rail), alone(rail), oneFeedOnly(rail), limits(rail), ownLimits(rail))
                .filter(Objects::nonNull)
                .forEach(findings::add);
        if (findings.isEmpty() && !rail.loads().isEmpty()) {
            findings.addAll(holds(rail));
        }
        return findings.stream();
    }

    private static @Nullable Finding tooLow(RailState rail) {
        return rail.loads().stream()
                .filter(LoadState::isTooLow)
                .min(by(each -> left(each.lowestV(), each.load().minV())))
                .map(worst -> low(LOW, rail, worst, worst.lowestV())
                        .finding(
                                Verdict.BREAKS,
                                gets(rail, worst, worst.lowestV()) + ", less than the "
                                        + volts(worst.load().minV()) + " it needs" + others(rail, LoadState::isTooLow)
                                        + "."))
                .orElse(null);
    }

    private static @Nullable Finding tooHigh(RailState rail) {
        return rail.loads().stream()
                .filter(LoadState::isTooHigh)
                .min(by(each -> -left(each.highestV(), each.load().maxV())))
                .map(worst -> high(rail, worst)
                        .finding(
                                Verdict.BREAKS,
                                PowerWords.quoted(worst.load().line().name()) + " on "
                                        + PowerWords.quoted(rail.rail().name()) + " gets up to "
                                        + volts(worst.highestV()) + " with full packs and little load, more than the "
                                        + volts(worst.load().maxV()) + " it bears" + others(rail, LoadState::isTooHigh)
                                        + "."))
                .orElse(null);
    }

    private static @Nullable Finding alone(RailState rail) {
        String weakest = rail.legs().stream()
                .min(Comparator.comparingDouble(Leg::lowestV))
                .map(leg -> leg.feed().name())
                .orElse("");
        return rail.loads().stream()
                .filter(LoadState::isTooLowAlone)
                .min(by(each -> left(each.lowestAloneV(), each.load().minV())))
                .map(worst -> low(ALONE, rail, worst, worst.lowestAloneV())
                        .finding(
                                rail.rail().redundant() ? Verdict.BREAKS : Verdict.TIGHT,
                                "With one feed alone, at worst " + PowerWords.quoted(weakest) + ", "
                                        + gets(rail, worst, worst.lowestAloneV()) + ", less than the "
                                        + volts(worst.load().minV()) + " it needs"
                                        + others(rail, LoadState::isTooLowAlone) + "."))
                .orElse(null);
    }

    private static @Nullable Finding oneFeedOnly(RailState rail) {
        if (!rail.rail().redundant() || rail.legs().size() > 1) {
            return null;
        }
        return Against.nothing(ALONE, rail.rail().name())
                .finding(
                        Verdict.BREAKS,
                        PowerWords.quoted(rail.rail().name())
                                + " is to hold with any one of its feeds gone, but only one ever gives it a voltage.");
    }

    private static @Nullable Finding limits(RailState rail) {
        List<String> names = rail.loads().stream()
                .filter(LoadState::lacksLimits)
                .map(each -> each.load().line().name())
                .toList();
        return names.isEmpty()
                ? null
                : Against.nothing(LIMITS, rail.rail().name())
                        .finding(
                                Verdict.UNKNOWN,
                                "Neither " + PowerWords.quoted(rail.rail().name()) + " nor " + PowerWords.names(names)
                                        + " on it say what least and greatest voltage they work at.");
    }

    /** What its loads bear is one thing; a rail that strays from what it was meant for may yet not be what somebody thinks it is. */
    private static @Nullable Finding ownLimits(RailState rail) {
        if (!rail.isOutsideOwnLimits() || rail.loads().stream().anyMatch(each -> each.isTooLow() || each.isTooHigh())) {
            return null;
        }
        return Against.nothing(OWN_LIMITS, rail.rail().name())
                .finding(
                        Verdict.TIGHT,
                        PowerWords.quoted(rail.rail().name()) + " gets " + span(rail.lowestV(), rail.highestV())
                                + ", and is meant for "
                                + meant(rail.rail().minV(), rail.rail().maxV()) + ".");
    }

    private static String meant(@Nullable Double minV, @Nullable Double maxV) {
        if (minV == null || maxV == null) {
            return minV == null ? "up to " + volts(maxV) : volts(minV) + " and more";
        }
        return span(minV, maxV);
    }

    private static String span(@Nullable Double lowestV, @Nullable Double highestV) {
        String lowest = volts(lowestV);
        String highest = volts(highestV);
        return lowest.equals(highest) ? lowest : lowest + " to " + highest;
    }

    private List<Finding> holds(RailState rail) {
        boolean isWell =
                !statement.isCutShort() && rail.loads().stream().allMatch(each -> each.verdict() == Verdict.HOLDS);
        Double lowestV = rail.lowestV();
        Double highestV = rail.highestV();
        if (!isWell || lowestV == null || highestV == null) {
            return List.of();
        }
        return List.of(Against.volts(RAIL, rail.rail().name(), lowestV, null, 0)
                .finding(
                        Verdict.HOLDS,
                        PowerWords.quoted(rail.rail().name()) + " stays at " + span(lowestV, highestV)
                                + ": every load on it is within its limits."));
    }

    /** Of equals the line that was there first, whatever its place. */
    private static Comparator<LoadState> by(ToDoubleFunction<LoadState> figure) {
        return Comparator.comparingDouble(figure)
                .thenComparing(each -> each.load().line().id());
    }

    private static Against low(String code, RailState rail, LoadState worst, @Nullable Double volts) {
        return Against.volts(
                        code,
                        rail.rail().name(),
                        volts,
                        worst.load().minV(),
                        left(volts, worst.load().minV()))
                .ofLine(worst.load().line().id());
    }

    private static Against high(RailState rail, LoadState worst) {
        return Against.volts(
                        HIGH,
                        rail.rail().name(),
                        worst.highestV(),
                        worst.load().maxV(),
                        -left(worst.highestV(), worst.load().maxV()))
                .ofLine(worst.load().line().id());
    }

    private static String gets(RailState rail, LoadState load, @Nullable Double volts) {
        String name = PowerWords.quoted(load.load().line().name()) + " on "
                + PowerWords.quoted(rail.rail().name());
        return volts != null && volts <= 0 ? name + " gets no voltage" : name + " gets down to " + volts(volts);
    }

    private static String others(RailState rail, Predicate<LoadState> filter) {
        long more = rail.loads().stream().filter(filter).count() - 1;
        return more == 0 ? "" : more == 1 ? "; so does one other part" : "; so do " + more + " other parts";
    }

    private static String volts(@Nullable Double volts) {
        return volts == null ? "" : PowerWords.volts(volts);
    }

    private static double left(@Nullable Double measured, @Nullable Double limit) {
        return measured == null || limit == null ? 0 : measured - limit;
    }
}
