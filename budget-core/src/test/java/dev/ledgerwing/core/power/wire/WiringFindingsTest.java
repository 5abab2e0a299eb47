package dev.ledgerwing.core.power.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * One run of two wires of 20 AWG and 1 m, and two servos with leads of three wires of 26 AWG and 0.5 m. By derivation from ASTM B258: 2 x
 * 0.51762 mm2 x 1 m + 2 x 3 x 0.12876 mm2 x 0.5 m = 1.42151 cm3 of copper, 12.7367 g, with the factor for the insulation 19.105 g.
 */
class WiringFindingsTest {

    private static final double DRAWN_G = 19.105;

    @Test
    void weighsRunsAndLeadsByTheirPieces() {
        assertThat(WiringMass.of(build()).drawn().grams()).isCloseTo(DRAWN_G, within(0.002));
    }

    @Test
    void weighsWhatLiesSideBySideOnceForEach() {
        FeedElement two = new FeedElement(
                "Wires", Kind.WIRE, null, null, 2, Sharing.JOINED, null, null, null, Builds.wire(20, 1000, 2), null);
        Build build = build();
        double runG = 2 * 0.51762 * 8.96 * Wires.INSULATION_FACTOR;
        assertThat(WiringMass.of(build.withFeeds(List.of(feed(two)))).drawn().grams())
                .isCloseTo(DRAWN_G + runG, within(0.002));
    }

    @Test
    void holdsWhereTheLedgerKnowsAsMuch() {
        Finding finding = only(build(wiring("harness", 25)));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Said.sentence(finding))
                .isEqualTo("The wires that are drawn weigh about 19 g, the ledger counts 25 g of wiring.");
        assertThat(finding.marginLeft()).isCloseTo(25 - DRAWN_G, within(0.002));
    }

    @Test
    void isTightWhereTheDrawingsWeighMore() {
        Finding finding = only(build(wiring("harness", 5), wiring("plugs", 3)));
        assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Said.sentence(finding))
                .isEqualTo("The wires that are drawn weigh about 19 g, 11 g more than the 8 g of wiring in the ledger:"
                        + " weigh the harness, or enter what is missing.");
    }

    @Test
    void isTightWhereTheLedgerHasNoWiring() {
        assertThat(only(build()).verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void isNotKnownWhereAWiringLineThatMattersHasNoMass() {
        Finding finding = only(build(wiring("harness", 5), withoutMass("leads")));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(Said.sentence(finding))
                .isEqualTo("The wires that are drawn weigh about 19 g, the ledger counts 5 g and has no mass yet for"
                        + " “Part leads”: whether it knows them all is not known.");
    }

    @Test
    void holdsWithoutAMassThatCannotChangeTheAnswer() {
        assertThat(only(build(wiring("harness", 25), withoutMass("leads"))).verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void countsNoOtherLinesAsWiring() {
        PartLine radio = Ledgers.line(
                "set", Category.RADIO, 1, Ledgers.certain("set", 500).mass());
        assertThat(only(build(radio)).verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void saysNothingWhereNoWireIsDrawn() {
        assertThat(WiringFindings.of(Ledgers.with(wiring("harness", 5)), Figures.METRIC))
                .isEmpty();
    }

    private static Finding only(Build build) {
        List<Finding> findings = WiringFindings.of(build, Figures.METRIC);
        assertThat(findings).extracting(Finding::code).containsExactly("power.wiring-mass");
        return findings.get(0);
    }

    private static Build build(PartLine... wiring) {
        List<PartLine> lines = new ArrayList<>(Arrays.asList(wiring));
        lines.add(servos());
        return Ledgers.with(lines)
                .withSources(List.of(PowerSource.external("bench", "Bench supply", 5.0, 3.0)))
                .withRails(List.of(new Rail("main", "Main", 5.0, null, null, false)))
                .withFeeds(List.of(feed(FeedElement.wire("Wires", Builds.wire(20, 1000, 2)))));
    }

    private static Feed feed(FeedElement element) {
        return new Feed("bench-main", "Bench to main", "bench", "main", List.of(element));
    }

    private static PartLine servos() {
        PartLine bare = Ledgers.line(
                "servos", Category.SERVO, 2, Ledgers.certain("servos", 12).mass());
        ElectricalLoad load = new ElectricalLoad(
                null, Draws.CONSTANT_CURRENT, null, null, null, null, Map.of(), null, Builds.wire(26, 500, 3));
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

    private static PartLine wiring(String id, double grams) {
        return Ledgers.line(id, Category.WIRING, 1, Ledgers.certain(id, grams).mass());
    }

    private static PartLine withoutMass(String id) {
        return Ledgers.line(id, Category.WIRING, 1, LineMass.notKnown());
    }
}
