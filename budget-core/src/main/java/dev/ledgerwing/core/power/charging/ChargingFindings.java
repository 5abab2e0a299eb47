package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.verdict.Finding;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is to be said of the charging in the sun, rule by rule; nothing where there are no solar cells. */
public final class ChargingFindings {

    /** Whether the cells reach a pack at all. */
    public static final String WAY = "power.charge-way";
    /** The most that flows into a pack against what it bears. */
    public static final String CURRENT = "power.charge-current";
    /** What stops the charging. */
    public static final String STOP = "power.charge-stop";
    /** Whether cold cells could charge a pack further than full. */
    public static final String OVERCHARGE = "power.charge-over";
    /** Whether hot cells get a pack full. */
    public static final String FILL = "power.charge-fill";
    /** An element that the charging current flows back through. */
    public static final String ELEMENT = "power.charge-element";

    private ChargingFindings() {}

    /** Every finding: first of each array, then of each pack. */
    public static List<Finding> of(NetworkStatement network, Charging charging) {
        return Stream.of(
                        charging.byCells().entrySet().stream()
                                .flatMap(entry -> new ChargeWayRule(entry.getKey(), entry.getValue()).findings()),
                        charging.packs().stream().flatMap(charge -> ofPack(charge, network)))
                .flatMap(Function.identity())
                .toList();
    }

    private static Stream<Finding> ofPack(PackCharge charge, NetworkStatement network) {
        Build build = network.network().build();
        PowerRules rules = build.power().rules();
        return Stream.of(
                        Stream.of(new ChargeCurrentRule(charge, rules).finding()),
                        Stream.of(new ChargeStopRule(charge, build.radio().functions()).finding()),
                        charge.ways().stream().flatMap(way -> new OverchargeRule(way, rules).finding().stream()),
                        charge.ways().stream().flatMap(way -> new FillRule(way, rules).finding().stream()),
                        charge.ways().stream().flatMap(way -> new ChargeElementRule(way, network).findings()))
                .flatMap(Function.identity());
    }
}
