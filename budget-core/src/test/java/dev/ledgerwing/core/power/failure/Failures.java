package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.Supplies;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Supplies that fail, and functions that hang on them. */
final class Failures {

    static final RadioFunction AILERON = function("aileron", Criticality.FLIGHT);
    static final RadioFunction ELEVATOR = function("elevator", Criticality.FLIGHT);
    static final RadioFunction CAMERA = function("camera", Criticality.MISSION);
    static final RadioFunction LIGHT = function("light", Criticality.CONVENIENCE);

    private Failures() {}

    static Build build(
            List<PowerSource> sources, List<Rail> rails, List<Feed> feeds, List<Phase> phases, PartLine... lines) {
        Build blank = Ledgers.with();
        return new Build(
                blank.airframe(),
                blank.budget(),
                blank.judgedBy(),
                blank.geometry(),
                blank.assemblies(),
                List.of(lines),
                blank.loadCases(),
                blank.bays(),
                blank.keepApart(),
                phases,
                new Power(sources, rails, feeds, PowerRules.DEFAULT, null),
                Radio.of(List.of(LIGHT, CAMERA, AILERON, ELEVATOR)),
                blank.outputs(),
                blank.weighIns(),
                blank.booking(),
                blank.assemblyBookings());
    }

    static FailureTable table(Build build) {
        return FailureTable.of(NetworkStatement.of(PowerNetwork.of(build)));
    }

    static FailureTable table(List<PowerSource> sources, List<Rail> rails, List<Feed> feeds, PartLine... lines) {
        return table(build(sources, rails, feeds, List.of(), lines));
    }

    static FailureRow open(FailureTable table, String feed, int index) {
        return table.ofElement(new ElementAt(feed, index)).orElseThrow();
    }

    static FailureRow out(FailureTable table, String source) {
        return table.of(Failure.Kind.SOURCE_OUT, source).orElseThrow();
    }

    static FailureRow shorted(FailureTable table, String rail) {
        return table.of(Failure.Kind.RAIL_SHORTED, rail).orElseThrow();
    }

    static PartLine serving(PartLine line, RadioFunction... functions) {
        return new PartLine(
                line.id(),
                line.assembly(),
                line.name(),
                line.category(),
                line.quantity(),
                line.mass(),
                line.place(),
                line.state(),
                line.supply(),
                line.note(),
                Arrays.stream(functions).map(RadioFunction::code).toList(),
                line.electrical(),
                line.needs());
    }

    /** Draws so much and works from a least voltage on. */
    static PartLine receiver(String id, String rail, double amperes, double minV) {
        ElectricalLoad load = Supplies.constantCurrent(rail, amperes, amperes);
        return Supplies.part(id, Supplies.within(minV, 30, load));
    }

    static FeedElement several(Kind kind, int count, Sharing sharing, double ratingA) {
        return new FeedElement("Several", kind, ratingA, null, count, sharing, 0.0, null, null, null, null);
    }

    private static RadioFunction function(String code, Criticality criticality) {
        return new RadioFunction(
                code,
                code.substring(0, 1).toUpperCase(Locale.ROOT) + code.substring(1),
                RadioFunction.Kind.PROPORTIONAL,
                List.of(),
                criticality,
                false);
    }
}
