package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;

/** Whether what is drawn hangs together: loops, rails that nothing feeds, loads on no rail. */
record StructureRule(NetworkStatement statement) {

    static final String BLANK = "power.nothing";
    static final String LOOP = "power.loop";
    static final String UNFED = "power.unfed";
    static final String NO_RAIL = "power.no-rail";
    static final String UNUSED = "power.unused-source";

    private PowerNetwork network() {
        return statement.network();
    }

    /** Where to begin, when there is nothing at all. */
    Finding blank() {
        return Against.nothing(BLANK, "Supply")
                .finding(
                        Verdict.UNKNOWN,
                        "Nothing of the supply is recorded yet: begin with a source, the rail that it feeds and what lies"
                                + " between the two; then hang the parts on the rail.");
    }

    Stream<Finding> findings() {
        return Stream.of(loops(), unfed(), onNoRail(), unused()).flatMap(stream -> stream);
    }

    private Stream<Finding> loops() {
        List<Rail> looped = network().loopedRails();
        if (looped.isEmpty()) {
            return Stream.empty();
        }
        List<String> names = looped.stream().map(Rail::name).sorted().toList();
        return Stream.of(Against.nothing(LOOP, names.get(0))
                .finding(
                        Verdict.BREAKS,
                        PowerWords.names(names) + " feed each other round about: they are not solved, nor what hangs"
                                + " behind them.",
                        "Take one of the feeds between them away."));
    }

    private Stream<Finding> unfed() {
        return statement.unfedRails().stream().map(this::unfed);
    }

    private Finding unfed(Rail rail) {
        List<String> loads = network().loadsOn(rail.code()).stream()
                .map(load -> load.line().name())
                .toList();
        String name = PowerWords.quoted(rail.name());
        String why = network().feedsInto(rail.code()).isEmpty()
                ? name + " has no feed"
                : name
                        + " gets no voltage from any of its feeds: solar cells alone are no supply, and a source without a"
                        + " voltage, or a rail without a feed, gives none";
        return loads.isEmpty()
                ? Against.nothing(UNFED, rail.name()).finding(Verdict.TIGHT, why + "; nothing hangs on it yet.")
                : Against.nothing(UNFED, rail.name())
                        .finding(Verdict.BREAKS, why + ": " + PowerWords.names(loads) + " " + stay(loads) + " dark.");
    }

    private static String stay(List<String> loads) {
        return loads.stream().distinct().count() == 1 ? "stays" : "stay";
    }

    private Stream<Finding> onNoRail() {
        return network().loads().stream()
                .filter(load -> load.rail() == null)
                .map(load -> Against.nothing(NO_RAIL, load.line().name())
                        .ofLine(load.line().id())
                        .finding(
                                Verdict.UNKNOWN,
                                PowerWords.quoted(load.line().name())
                                        + " draws current but hangs on no rail, so nothing that carries it is known.",
                                "Hang it on a rail."));
    }

    private Stream<Finding> unused() {
        return network().sources().stream()
                .filter(source -> network().feedsFrom(source.code()).isEmpty())
                .map(PowerSource::name)
                .map(name -> Against.nothing(UNUSED, name)
                        .finding(Verdict.TIGHT, PowerWords.quoted(name) + " feeds nothing: no feed begins there."));
    }
}
