package dev.ledgerwing.report;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Pack.Chemistry;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.quantity.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Supplies to draw, on the airframe of {@link Builds#complete}. */
public final class PowerBuilds {

    private PowerBuilds() {}

    /**
     * Two packs, the second behind a regulator of its own; both feed the electronics through diodes, the first the motor too, and the
     * servos hang on a regulator behind the electronics.
     */
    public static Build twoPacks() {
        return Builds.complete()
                .withPhases(phases())
                .withSources(List.of(
                        PowerSource.battery("flight-pack", "Flight pack", null, pack(4, 5000.0)),
                        PowerSource.battery("standby-pack", "Standby pack", null, pack(3, 1000.0))))
                .withRails(List.of(
                        new Rail("motor", "Motor", 14.8, 12.0, 17.0, false),
                        new Rail("electronics", "Electronics", 5.2, 4.75, 5.5, true),
                        new Rail("servos", "Servos", 5.0, 4.0, 5.5, false)))
                .withFeeds(List.of(
                        new Feed(
                                "main",
                                "Main feed",
                                "flight-pack",
                                "motor",
                                List.of(
                                        rated("Main plug", Kind.CONNECTOR, 60.0),
                                        rated("Main fuse", Kind.FUSE, 40.0),
                                        wire("Motor wire", 12, 350),
                                        rated("Current sensor", Kind.SENSOR, 60.0),
                                        rated("Motor controller", Kind.MOTOR_CONTROLLER, 60.0))),
                        new Feed("first", "First leg", "flight-pack", "electronics", leg("first")),
                        new Feed("second", "Second leg", "standby-pack", "electronics", leg("second")),
                        new Feed(
                                "to-servos",
                                "Servo feed",
                                "electronics",
                                "servos",
                                List.of(rated("Servo breaker", Kind.BREAKER, 7.5), wire("Servo wire", 20, 600)))))
                .withLines(loads(Builds.complete().lines()));
    }

    /** The build with one pack, one regulator and one part that is held against everything: nothing breaks, and all is known. */
    public static Build supplied(Build build) {
        return RadioBuilds.commanded(new Build(
                        build.airframe(),
                        build.budget(),
                        build.judgedBy(),
                        build.geometry(),
                        build.assemblies(),
                        build.lines(),
                        build.loadCases(),
                        build.bays(),
                        build.keepApart(),
                        List.of(),
                        build.power(),
                        Radio.of(List.of(new RadioFunction(
                                "rudder",
                                "Rudder",
                                RadioFunction.Kind.PROPORTIONAL,
                                List.of(),
                                RadioFunction.Criticality.FLIGHT,
                                false))),
                        build.outputs(),
                        build.weighIns(),
                        build.booking(),
                        build.assemblyBookings())
                .withSources(List.of(PowerSource.battery("pack", "Pack", null, pack(2, 1000.0))))
                .withRails(List.of(new Rail("five", "Five volts", 5.0, 4.5, 5.5, false)))
                .withFeeds(List.of(new Feed(
                        "feed",
                        "Feed",
                        "pack",
                        "five",
                        List.of(
                                rated("Plug", Kind.CONNECTOR, 10.0),
                                rated("Fuse", Kind.FUSE, 3.0),
                                wire("Wire", 22, 300),
                                FeedElement.regulator(
                                        "Regulator",
                                        3.0,
                                        3.0,
                                        new Regulator(Regulator.Type.SWITCHING, 5.0, 90.0, 0.5, 5.5, 20.0, 0.01))))))
                .withLines(serving(build.lines())));
    }

    private static List<PartLine> serving(List<PartLine> lines) {
        List<PartLine> loaded = new ArrayList<>(lines);
        loaded.set(1, drawing(lines.get(1), "five", 0.3, 0.8, List.of("rudder")));
        return loaded;
    }

    /** {@link #twoPacks} with nothing rated and nothing known of any load. */
    public static Build twoPacksUnrated() {
        Build build = twoPacks();
        return build.withFeeds(build.power().feeds().stream()
                        .map(feed -> new Feed(
                                feed.code(),
                                feed.name(),
                                feed.from(),
                                feed.to(),
                                feed.elements().stream()
                                        .map(PowerBuilds::unrated)
                                        .toList()))
                        .toList())
                .withLines(Builds.complete().lines());
    }

    private static FeedElement unrated(FeedElement element) {
        return element.wire() == null && element.regulator() == null
                ? FeedElement.rated(element.name(), element.kind(), null)
                : element;
    }

    /** Rails that feed each other, one that nothing feeds, a feed with nothing in it. */
    public static Build tangled() {
        return Builds.complete()
                .withSources(List.of(PowerSource.external("bench", "Bench supply", 12.0, null)))
                .withRails(List.of(
                        new Rail("a", "Rail A", null, null, null, false),
                        new Rail("b", "Rail B", 5.0, null, null, false),
                        new Rail("c", "Rail C", 3.3, null, null, false),
                        new Rail("lonely", "Lonely rail with a name of several words", 7.4, null, null, false)))
                .withFeeds(List.of(
                        new Feed("in", "In", "bench", "a", List.of()),
                        new Feed("a-b", "A to B", "a", "b", List.of(rated("Fuse", Kind.FUSE, null))),
                        new Feed("b-a", "B to A", "b", "a", List.of(rated("Switch", Kind.SWITCH, null))),
                        new Feed("b-c", "B to C", "b", "c", List.of()),
                        new Feed("a-c", "A to C", "a", "c", List.of(rated("Fuse of C", Kind.FUSE, 1.0)))));
    }

    /** {@link #twoPacks} with the motor on the pack itself, and cells that charge it through a tracker, a switch and a diode. */
    public static Build sunny() {
        Build build = twoPacks();
        List<PowerSource> sources = new ArrayList<>(build.power().sources());
        sources.add(PowerSource.solar(
                "cells",
                "Cells of the wing",
                null,
                new SolarArray(
                        40.0, 18.0, 21.6, 2.4, -0.35, -0.28, 3, 90, true, SolarArray.Connection.TRACKER, 95.0, null)));
        List<Feed> feeds = new ArrayList<>(build.power().feeds().stream()
                .map(PowerBuilds::withoutController)
                .toList());
        feeds.add(new Feed(
                "sun", "Sun", "cells", "motor", List.of(rated("Stop switch", Kind.SWITCH, 5.0), diode("Sun diode"))));
        return build.withSources(sources)
                .withFeeds(feeds)
                .withSolarDay(new SolarDay(
                        "Bog edge", 53.2, -7.6, LocalDate.of(2026, 6, 21), 1, 300, 15, 90, 85, null, 6, 60, null));
    }

    /** Nobody knows what a motor controller lets through from its motor to the pack. */
    private static Feed withoutController(Feed feed) {
        return new Feed(
                feed.code(),
                feed.name(),
                feed.from(),
                feed.to(),
                feed.elements().stream()
                        .filter(element -> element.kind() != Kind.MOTOR_CONTROLLER)
                        .toList());
    }

    /** Several dozens of elements: {@code packs} packs, each with a rail of its own and a leg to a common one, and rails behind it. */
    public static Build large(int packs, int elements, int depth) {
        List<PowerSource> sources = IntStream.range(0, packs)
                .mapToObj(n -> PowerSource.battery("pack-" + n, "Pack number " + n, null, pack(6, 4000.0)))
                .toList();
        List<Rail> rails = new ArrayList<>(List.of(new Rail("common", "Common rail", 22.2, 18.0, 26.0, true)));
        List<Feed> feeds = new ArrayList<>();
        for (int n = 0; n < packs; n++) {
            rails.add(new Rail("own-" + n, "Own rail of pack " + n, 22.2, null, null, false));
            feeds.add(new Feed("own-" + n + "-feed", "Own feed " + n, "pack-" + n, "own-" + n, chain(elements)));
            feeds.add(new Feed("common-" + n, "Common leg " + n, "pack-" + n, "common", chain(elements)));
        }
        for (int n = 0; n < depth; n++) {
            rails.add(new Rail("deep-" + n, "Deep rail " + n, 5.0, 4.5, 5.5, false));
            feeds.add(new Feed(
                    "deep-" + n + "-feed",
                    "Deep feed " + n,
                    n == 0 ? "common" : "deep-" + (n - 1),
                    "deep-" + n,
                    chain(2)));
        }
        return Builds.complete().withSources(sources).withRails(rails).withFeeds(feeds);
    }

    /** As many of every kind, in turn. */
    private static List<FeedElement> chain(int count) {
        Kind[] kinds = {
            Kind.CONNECTOR, Kind.FUSE, Kind.BREAKER, Kind.SWITCH, Kind.SENSOR, Kind.DIODE, Kind.MOTOR_CONTROLLER
        };
        return IntStream.range(0, count)
                .mapToObj(n -> rated("Element number " + n + " of a long chain", kinds[n % kinds.length], 10.0 + n))
                .toList();
    }

    private static List<Phase> phases() {
        return List.of(
                new Phase("power-on", "Power on", 3.0, false, null, List.of("cruise"), false),
                new Phase("climb", "Climb", 2.0, false, null, List.of("cruise"), false),
                new Phase("cruise", "Cruise", null, true, null, List.of(), true));
    }

    private static List<FeedElement> leg(String which) {
        return List.of(
                rated("Plug, " + which + " leg", Kind.CONNECTOR, 10.0),
                rated("Fuse, " + which + " leg", Kind.FUSE, 5.0),
                wire("Wire, " + which + " leg", 22, 400),
                FeedElement.regulator(
                        "Regulator, " + which + " leg",
                        4.0,
                        6.0,
                        new Regulator(Regulator.Type.SWITCHING, 5.5, 90.0, 1.0, 7.0, 26.0, 0.01)),
                diode("Diode, " + which + " leg"));
    }

    private static FeedElement rated(String name, Kind kind, @Nullable Double ratingA) {
        return FeedElement.rated(name, kind, ratingA);
    }

    private static FeedElement diode(String name) {
        return FeedElement.diode(name, 5.0, 0.35);
    }

    private static FeedElement wire(String name, int awg, double mm) {
        return FeedElement.wire(name, new WireRun(awg, Length.ofMm(mm), 2, Routing.BUNDLE, 200.0));
    }

    private static Pack pack(int cells, double mah) {
        return new Pack(Chemistry.LITHIUM_POLYMER, cells, 1, mah, 25.0, 40.0, 4.0, 80.0, 1.0, null, null, null, true);
    }

    private static List<PartLine> loads(List<PartLine> lines) {
        List<PartLine> loaded = new ArrayList<>(lines);
        loaded.set(0, drawing(lines.get(0), "motor", 12.0, 32.0));
        loaded.set(1, drawing(lines.get(1), "electronics", 0.9, 1.4));
        loaded.set(3, drawing(lines.get(3), "servos", 0.4, 1.5));
        loaded.set(5, drawing(lines.get(5), "electronics", 0.01, 0.02));
        return loaded;
    }

    private static PartLine drawing(PartLine line, String rail, double typicalA, double peakA) {
        return drawing(line, rail, typicalA, peakA, List.of());
    }

    private static PartLine drawing(PartLine line, String rail, double typicalA, double peakA, List<String> serves) {
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
                serves,
                List.of(new ElectricalLoad(
                        rail,
                        ElectricalLoad.Draws.CONSTANT_CURRENT,
                        typicalA,
                        peakA,
                        null,
                        null,
                        rail.equals("motor") ? Map.of("power-on", 0.0, "cruise", 0.6) : Map.of(),
                        null,
                        null)),
                PortNeeds.NONE);
    }
}
