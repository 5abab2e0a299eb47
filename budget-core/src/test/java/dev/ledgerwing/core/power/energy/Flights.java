package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Pack.Chemistry;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Small supplies to calculate with: packs of a nominal 11.1 V without inner resistance, bare feeds, constant currents. */
public final class Flights {

    private Flights() {}

    /** Three lithium polymer cells in series, of which 80 % may be used; 1 C charging, cut off by itself. */
    public static PowerSource pack(String code, @Nullable Double capacityMah) {
        return pack(code, capacityMah, 80.0);
    }

    public static PowerSource pack(String code, @Nullable Double capacityMah, @Nullable Double usablePercent) {
        return packOf(code, capacityMah, usablePercent, 1.0, true);
    }

    public static PowerSource packOf(
            String code,
            @Nullable Double capacityMah,
            @Nullable Double usablePercent,
            @Nullable Double maxChargeC,
            boolean automaticCutOff) {
        return PowerSource.battery(
                code,
                "Pack " + code,
                null,
                new Pack(
                        Chemistry.LITHIUM_POLYMER,
                        3,
                        1,
                        capacityMah,
                        20.0,
                        40.0,
                        0.0,
                        usablePercent,
                        maxChargeC,
                        null,
                        null,
                        null,
                        automaticCutOff));
    }

    public static Rail rail(String code) {
        return new Rail(code, "Rail " + code, 11.1, null, null, false);
    }

    public static Rail redundantRail(String code) {
        return new Rail(code, "Rail " + code, 11.1, null, null, true);
    }

    /** From one to the other, its code made of both. */
    public static Feed feed(String from, String to, FeedElement... elements) {
        return new Feed(from + "-" + to, from + " to " + to, from, to, Arrays.asList(elements));
    }

    /** One piece that draws a constant current on a rail; in phases that are not named all the time. */
    public static PartLine load(
            String id, @Nullable String rail, @Nullable Double typicalA, Map<String, Double> dutyByPhase) {
        return drawing(
                id,
                new ElectricalLoad(
                        rail, Draws.CONSTANT_CURRENT, typicalA, typicalA, null, null, dutyByPhase, null, null));
    }

    public static PartLine drawing(String id, ElectricalLoad load) {
        PartLine bare = Ledgers.named(id, "Part " + id, Category.AVIONICS);
        return new PartLine(
                bare.id(),
                bare.assembly(),
                bare.name(),
                bare.category(),
                bare.quantity(),
                bare.mass(),
                bare.place(),
                bare.state(),
                bare.supply(),
                null,
                List.of(),
                List.of(load),
                bare.needs());
    }

    public static Phase fixed(String code, @Nullable Double minutes) {
        return new Phase(code, "Phase " + code, minutes, false, null, List.of(), false);
    }

    public static Phase stretching(String code) {
        return new Phase(code, "Phase " + code, null, true, null, List.of(), false);
    }

    /** One pack, one rail, one bare feed. */
    public static Build onePack(PowerSource pack, List<Phase> phases, PartLine... loads) {
        Power power = power(List.of(pack), List.of(rail("main")), List.of(feed(pack.code(), "main")));
        return build(power, phases, loads);
    }

    public static Power power(List<PowerSource> sources, List<Rail> rails, List<Feed> feeds) {
        return new Power(sources, rails, feeds, PowerRules.DEFAULT, null);
    }

    public static Build build(Power power, List<Phase> phases, PartLine... loads) {
        return Ledgers.with().withPhases(phases).withPower(power).withLines(Arrays.asList(loads));
    }

    public static Build wanting(@Nullable Double minutes, double landingReserveMinutes, Build build) {
        return build.withPowerRules(new PowerRules(
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                minutes,
                landingReserveMinutes,
                null,
                null));
    }
}
