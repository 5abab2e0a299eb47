package dev.ledgerwing.core.power.wire;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the wires weigh that are drawn, against what the ledger knows of wiring. Leads that are not drawn are in neither.
 *
 * @param drawn copper of the wires in feeds and of the leads of loads, with a factor for the insulation
 * @param inLedger lines of wiring whose mass is known
 * @param linesWithoutMass lines of wiring whose mass is not
 */
public record WiringMass(Mass drawn, Mass inLedger, List<PartLine> linesWithoutMass) {

    public WiringMass {
        linesWithoutMass = List.copyOf(linesWithoutMass);
    }

    public static WiringMass of(Build build) {
        List<PartLine> wiring = build.lines().stream()
                .filter(line -> line.category() == Category.WIRING)
                .toList();
        return new WiringMass(
                sum(Stream.concat(inFeeds(build), leads(build))),
                sum(wiring.stream().map(PartLine::totalMass)),
                wiring.stream().filter(line -> !line.isMassKnown()).toList());
    }

    public Mass missing() {
        return drawn.minus(inLedger);
    }

    private static Stream<Mass> inFeeds(Build build) {
        return build.power().feeds().stream()
                .flatMap(feed -> feed.elements().stream())
                .map(WiringMass::ofElement);
    }

    private static Mass ofElement(FeedElement element) {
        return ofRun(element.wire()).times(element.count());
    }

    private static Stream<Mass> leads(Build build) {
        return build.lines().stream()
                .flatMap(line -> line.electrical().stream()
                        .map(ElectricalLoad::lead)
                        .map(WiringMass::ofRun)
                        .map(mass -> mass.times(line.quantity())));
    }

    private static Mass ofRun(@Nullable WireRun run) {
        return run == null ? Mass.ZERO : Wires.mass(run);
    }

    private static Mass sum(Stream<Mass> masses) {
        return masses.reduce(Mass.ZERO, Mass::plus);
    }
}
