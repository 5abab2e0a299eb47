package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.constantPower;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.load;
import static dev.ledgerwing.core.power.Supplies.packOf;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GapRuleTest {

    private static final List<Rail> MAIN = List.of(rail("main", 5));

    private static Build with(FeedElement element, ElectricalLoad load) {
        return build(List.of(bench("b", 5)), MAIN, List.of(feed("b", "main", element)), part("L", load));
    }

    @Test
    void aSupplyOfWhichEverythingIsKnownHasNoneOfTheseFindings() {
        Build build = with(fuse(10), constantPower("main", 1, 2));
        for (String code : List.of(
                GapRule.DEMAND, GapRule.NOMINAL, GapRule.SOURCE, GapRule.LOSS, GapRule.NOT_COUNTED, GapRule.CHOICES)) {
            Found.none(code, build);
        }
    }

    @Test
    void aLoadWithoutATypicalOrAPeakCurrentIsNotKnownNorWhatCarriesIt() {
        assertThat(Found.said(
                        GapRule.DEMAND,
                        Verdict.UNKNOWN,
                        with(fuse(10), load("main", Draws.CONSTANT_CURRENT, 1.0, null))))
                .contains("“Part L” has no peak current yet");
        assertThat(Found.said(
                        GapRule.DEMAND,
                        Verdict.UNKNOWN,
                        with(fuse(10), load("main", Draws.CONSTANT_CURRENT, null, 2.0))))
                .contains("no typical current");
        Build build = with(fuse(10), load("main", Draws.CONSTANT_CURRENT, null, null));
        assertThat(Found.said(GapRule.DEMAND, Verdict.UNKNOWN, build)).contains("neither a typical nor a peak current");
        NetworkStatement statement = NetworkStatement.of(PowerNetwork.of(build));
        assertThat(statement.elements().get(0).verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(statement.sources().get(0).verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(statement.loads().get(0).verdict()).isEqualTo(Verdict.UNKNOWN);
        Found.none(CurrentRule.CARRIES, build);
        Found.none(RailRule.RAIL, build);
    }

    @Test
    void whatIsKnownBreaksARatingAlsoWhereMoreIsNotKnown() {
        Build build = with(fuse(10), load("main", Draws.CONSTANT_CURRENT, 12.0, null));
        assertThat(Found.said(CurrentRule.ELEMENT, Verdict.BREAKS, build)).contains("more than the 10 A");
    }

    @Test
    void constantPowerOnARailWithoutANominalVoltageIsNotKnown() {
        Build build = with(fuse(10), constantPower("main", 1, 2))
                .withRails(List.of(new Rail("main", "Rail main", null, 0.0, 10.0, false)));
        assertThat(Found.said(GapRule.NOMINAL, Verdict.UNKNOWN, build)).contains("“Rail main” has no nominal voltage");
    }

    @Test
    void aSupplyWithoutAVoltageIsNotKnownAndGivesNothing() {
        Build build = with(fuse(10), constantCurrent("main", 1, 2))
                .withSources(List.of(PowerSource.external("b", "Bench", null, 10.0)));
        assertThat(Found.said(GapRule.SOURCE, Verdict.UNKNOWN, build)).contains("“Bench” has no voltage");
        assertThat(Found.said(StructureRule.UNFED, Verdict.BREAKS, build)).contains("“Part L” stays dark");
    }

    @Test
    void aPackWithoutAnInnerResistanceIsNotKnown() {
        Build build =
                with(fuse(10), constantCurrent("main", 1, 2)).withSources(List.of(packOf("b", 2, null, 10.0, 20.0)));
        assertThat(Found.said(GapRule.SOURCE, Verdict.UNKNOWN, build)).contains("“Pack b” has no inner resistance");
        assertThat(NetworkStatement.of(PowerNetwork.of(build)).loads().get(0).verdict())
                .isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void aDiodeWithoutAForwardVoltageIsNotKnown() {
        FeedElement diode = FeedElement.diode("Diode", 10.0, null);
        assertThat(Found.said(GapRule.LOSS, Verdict.UNKNOWN, with(diode, constantCurrent("main", 1, 2))))
                .contains("“Diode” has no forward voltage");
    }

    @Test
    void aSwitchingRegulatorWithoutAnEfficiencyIsNotKnownNorWhatItIsFedBy() {
        FeedElement regulator = FeedElement.regulator(
                "Regulator", 10.0, 10.0, new Regulator(Regulator.Type.SWITCHING, 3, null, 0.5, 4.0, 20.0, 0.0));
        Build build = with(regulator, constantCurrent("main", 1, 2));
        assertThat(Found.said(GapRule.LOSS, Verdict.UNKNOWN, build)).contains("“Regulator” has no efficiency");
        assertThat(NetworkStatement.of(PowerNetwork.of(build)).sources().get(0).verdict())
                .isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void smallLossesThatNobodyRecordedAreNamed() {
        Build build = with(FeedElement.rated("Plug", Kind.CONNECTOR, 10.0), constantCurrent("main", 1, 2));
        assertThat(Found.said(GapRule.NOT_COUNTED, Verdict.HOLDS, build)).contains("“Plug”", "not counted");
    }

    @Test
    void moreChoicesOfFeedsThanAreLookedAtAreNotKnown() {
        assertThat(Found.said(GapRule.CHOICES, Verdict.UNKNOWN, doublyFed(9))).contains("more than 256 ways");
        Found.none(GapRule.CHOICES, doublyFed(8));
    }

    private static Build doublyFed(int count) {
        List<Rail> rails = new ArrayList<>();
        List<Feed> feeds = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rails.add(rail("r" + i, 5));
            feeds.add(feed("a", "r" + i, diode(0.3)));
            feeds.add(feed("b", "r" + i, diode(0.3)));
        }
        return build(List.of(bench("a", 5), bench("b", 5)), rails, feeds, part("L", constantCurrent("r0", 1, 1)));
    }
}
