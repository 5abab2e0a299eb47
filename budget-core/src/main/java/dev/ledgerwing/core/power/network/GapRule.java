package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What is missing before voltages and currents can be trusted. */
record GapRule(NetworkStatement statement) {

    static final String DEMAND = "power.demand";
    static final String NOMINAL = "power.nominal-voltage";
    static final String SOURCE = "power.source-voltage";
    static final String LOSS = "power.loss";
    static final String NOT_COUNTED = "power.not-counted";
    static final String CHOICES = "power.choices";

    private PowerNetwork network() {
        return statement.network();
    }

    Stream<Finding> findings() {
        return Stream.of(demands(), nominals(), sources(), losses(), notCounted(), choices())
                .flatMap(stream -> stream);
    }

    private Stream<Finding> demands() {
        return network().loads().stream()
                .filter(load -> load.rail() != null)
                .filter(load -> load.load().typicalA() == null || load.load().peakA() == null)
                .map(load -> Against.nothing(DEMAND, load.line().name())
                        .ofLine(load.line().id())
                        .finding(Verdict.UNKNOWN, demand(load.line().name(), load.load())));
    }

    private static String demand(String name, ElectricalLoad load) {
        String missing = load.typicalA() != null
                ? "no peak current"
                : load.peakA() != null ? "no typical current" : "neither a typical nor a peak current";
        return PowerWords.quoted(name) + " has " + missing
                + " yet: whatever carries it carries more than is counted here.";
    }

    private Stream<Finding> nominals() {
        return statement.rails().stream()
                .filter(rail ->
                        rail.loads().stream().anyMatch(each -> each.load().lacksNominalV()))
                .map(rail -> Against.nothing(NOMINAL, rail.rail().name())
                        .finding(
                                Verdict.UNKNOWN,
                                PowerWords.quoted(rail.rail().name())
                                        + " has no nominal voltage, so nobody knows how many watts the loads of constant"
                                        + " power on it draw."));
    }

    private Stream<Finding> sources() {
        Stream<Finding> volts = network().sources().stream()
                .filter(source -> source.kind() == PowerSource.Kind.EXTERNAL && source.outputV() == null)
                .map(source -> source(source, "has no voltage yet: it gives nothing here."));
        Stream<Finding> sag = network().sources().stream()
                .filter(Gaps::isSagUnknown)
                .map(source -> source(
                        source,
                        "has no inner resistance yet: voltages are lower under load than they are counted here."));
        return Stream.concat(volts, sag);
    }

    private static Finding source(PowerSource source, String sentence) {
        return Against.nothing(SOURCE, source.name())
                .finding(Verdict.UNKNOWN, PowerWords.quoted(source.name()) + " " + sentence);
    }

    private Stream<Finding> losses() {
        return Stream.concat(
                elements(Gaps::isLossUnknown)
                        .map(name -> Against.nothing(LOSS, name)
                                .finding(
                                        Verdict.UNKNOWN,
                                        PowerWords.quoted(name)
                                                + " has no forward voltage yet: voltages behind it are lower than they"
                                                + " are counted here.")),
                elements(Gaps::isInputUnknown)
                        .map(name -> Against.nothing(LOSS, name)
                                .finding(
                                        Verdict.UNKNOWN,
                                        PowerWords.quoted(name)
                                                + " has no efficiency yet: it draws more than is counted here.")));
    }

    private Stream<String> elements(Predicate<FeedElement> filter) {
        return network().feeds().stream()
                .map(Feed::elements)
                .flatMap(List::stream)
                .filter(filter)
                .map(FeedElement::name);
    }

    /** Small losses that nobody recorded do not make a supply unknown, but nobody is to think that they are in it. */
    private Stream<Finding> notCounted() {
        List<String> names = Stream.concat(elements(Gaps::isLeftOut), elements(GapRule::lacksOwnDraw))
                .toList();
        if (names.isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(Against.nothing(NOT_COUNTED, "Small losses")
                .finding(
                        Verdict.HOLDS,
                        "No resistance, or no current of its own, is recorded for " + PowerWords.names(names)
                                + ": what they lose is not counted."));
    }

    private static boolean lacksOwnDraw(FeedElement element) {
        Regulator regulator = element.regulator();
        return regulator != null && regulator.quiescentA() == null;
    }

    private Stream<Finding> choices() {
        if (!statement.isCutShort()) {
            return Stream.empty();
        }
        return Stream.of(Against.nothing(CHOICES, "Choices of feeds")
                .finding(
                        Verdict.UNKNOWN,
                        "There are more than " + network().mostChoices()
                                + " ways to choose one feed for each rail: of the rails"
                                + " furthest out only the first feed was looked at."));
    }
}
