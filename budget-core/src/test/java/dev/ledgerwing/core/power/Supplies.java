package dev.ledgerwing.core.power;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Small supplies to calculate with; whatever is not given is known and gets in nobody's way. */
public final class Supplies {

    private Supplies() {}

    public static Build build(List<PowerSource> sources, List<Rail> rails, List<Feed> feeds, PartLine... lines) {
        return build(new Power(sources, rails, feeds, PowerRules.DEFAULT, null), List.of(), lines);
    }

    public static Build build(Power power, List<Phase> phases, PartLine... lines) {
        return Ledgers.with().withPower(power).withPhases(phases).withLines(Arrays.asList(lines));
    }

    /** A bench supply of one voltage behind no resistance, good for 1000 A. */
    public static PowerSource bench(String code, double volts) {
        return PowerSource.external(code, "Bench " + code, volts, 1000.0);
    }

    /** Cells of 4.2, 3.7 and 3.0 V with an inner resistance, 10 Ah, good for 1000 A. */
    public static PowerSource pack(String code, int seriesCells, double cellMilliohm) {
        return packOf(code, seriesCells, cellMilliohm, 100.0, 100.0);
    }

    public static PowerSource packOf(
            String code,
            int seriesCells,
            @Nullable Double cellMilliohm,
            @Nullable Double continuousC,
            @Nullable Double burstC) {
        return PowerSource.battery(
                code,
                "Pack " + code,
                null,
                new Pack(
                        Pack.Chemistry.LITHIUM_POLYMER,
                        seriesCells,
                        1,
                        10_000.0,
                        continuousC,
                        burstC,
                        cellMilliohm,
                        80.0,
                        1.0,
                        4.2,
                        3.7,
                        3.0,
                        true));
    }

    public static Rail rail(String code, double nominalV) {
        return new Rail(code, "Rail " + code, nominalV, 0.0, 1000.0, false);
    }

    public static Rail redundant(String code, double nominalV, double minV, double maxV) {
        return new Rail(code, "Rail " + code, nominalV, minV, maxV, true);
    }

    public static Feed feed(String from, String to, FeedElement... elements) {
        return new Feed(from + "-" + to, "Feed " + from + " to " + to, from, to, List.of(elements));
    }

    /** A plug of so many milliohm, good for 1000 A. */
    public static FeedElement resistance(double milliohm) {
        return new FeedElement(
                "Plug of " + milliohm + " mohm",
                Kind.CONNECTOR,
                1000.0,
                null,
                1,
                null,
                milliohm,
                null,
                null,
                null,
                null);
    }

    /** Without resistance. */
    public static FeedElement fuse(double ratingA) {
        return rated(Kind.FUSE, ratingA);
    }

    /** Without resistance. */
    public static FeedElement rated(Kind kind, double ratingA) {
        return new FeedElement(
                kind + " of " + ratingA + " A", kind, ratingA, null, 1, null, 0.0, null, null, null, null);
    }

    public static FeedElement diode(double forwardV) {
        return FeedElement.diode("Diode of " + forwardV + " V", 1000.0, forwardV);
    }

    public static FeedElement linear(double outputV, double dropoutV) {
        return FeedElement.regulator(
                "Linear regulator",
                1000.0,
                1000.0,
                new Regulator(Regulator.Type.LINEAR, outputV, null, dropoutV, 0.0, 1000.0, 0.0));
    }

    public static FeedElement switching(double outputV, double efficiencyPercent) {
        return FeedElement.regulator(
                "Switching regulator",
                1000.0,
                1000.0,
                new Regulator(Regulator.Type.SWITCHING, outputV, efficiencyPercent, 0.5, 0.0, 1000.0, 0.0));
    }

    public static ElectricalLoad constantCurrent(String rail, double typicalA, double peakA) {
        return load(rail, Draws.CONSTANT_CURRENT, typicalA, peakA);
    }

    /** Watts at the nominal voltage of its rail. */
    public static ElectricalLoad constantPower(String rail, double typicalA, double peakA) {
        return load(rail, Draws.CONSTANT_POWER, typicalA, peakA);
    }

    public static ElectricalLoad load(
            @Nullable String rail, Draws draws, @Nullable Double typicalA, @Nullable Double peakA) {
        return new ElectricalLoad(rail, draws, typicalA, peakA, 0.0, 1000.0, Map.of(), null, null);
    }

    public static ElectricalLoad within(double minV, double maxV, ElectricalLoad load) {
        return new ElectricalLoad(
                load.rail(),
                load.draws(),
                load.typicalA(),
                load.peakA(),
                minV,
                maxV,
                load.dutyByPhase(),
                load.exclusiveGroup(),
                load.lead());
    }

    public static ElectricalLoad inGroup(String group, ElectricalLoad load) {
        return new ElectricalLoad(
                load.rail(),
                load.draws(),
                load.typicalA(),
                load.peakA(),
                load.minV(),
                load.maxV(),
                load.dutyByPhase(),
                group,
                load.lead());
    }

    public static ElectricalLoad running(Map<String, Double> dutyByPhase, ElectricalLoad load) {
        return new ElectricalLoad(
                load.rail(),
                load.draws(),
                load.typicalA(),
                load.peakA(),
                load.minV(),
                load.maxV(),
                dutyByPhase,
                load.exclusiveGroup(),
                load.lead());
    }

    /** One piece that draws all of these. */
    public static PartLine part(String id, ElectricalLoad... loads) {
        return parts(id, 1, loads);
    }

    public static PartLine parts(String id, int quantity, ElectricalLoad... loads) {
        return new PartLine(
                id,
                "fuselage",
                "Part " + id,
                Category.AVIONICS,
                quantity,
                LineMass.of(Mass.ofGrams(20), Basis.WEIGHED),
                LinePlace.UNKNOWN,
                FitState.PLANNED,
                Supply.NONE,
                null,
                List.of(),
                List.of(loads),
                PortNeeds.NONE);
    }

    public static Phase phase(String code) {
        return new Phase(code, "Phase " + code, 5.0, false, null, List.of(), false);
    }
}
