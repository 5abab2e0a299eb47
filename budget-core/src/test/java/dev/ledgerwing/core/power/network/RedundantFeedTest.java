package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.redundant;
import static dev.ledgerwing.core.power.Supplies.within;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two supplies through diodes, no sharing assumed; the three edge cases by derivation. */
class RedundantFeedTest {

    private static Build fed(double aV, double aForwardV, double bV, double bForwardV) {
        return build(
                List.of(bench("a", aV), bench("b", bV)),
                List.of(redundant("main", 5, 4, 6)),
                List.of(feed("a", "main", diode(aForwardV)), feed("b", "main", diode(bForwardV))),
                part("L", within(4.5, 5.5, constantCurrent("main", 3, 3))));
    }

    private static NetworkSolution normal(Build build, Outage outage) {
        PowerNetwork network = PowerNetwork.of(build);
        return network.on(network.occasions().get(0), outage).normal(Charge.NOMINAL, LoadLevel.CONTINUOUS);
    }

    @Test
    void ofEqualLegsEachMustCarryAllAndTheEarlierDoesInTheOrdinaryWay() {
        Build build = fed(5.2, 0.4, 5.2, 0.4);
        NetworkStatement statement = NetworkStatement.of(PowerNetwork.of(build));
        assertThat(statement.elements()).extracting(ElementLoad::continuousA).containsExactly(3.0, 3.0);
        assertThat(statement.sources()).extracting(SourceLoad::continuousA).containsExactly(3.0, 3.0);
        assertThat(normal(build, Outage.NONE).amperes("a")).isEqualTo(3);
        assertThat(normal(build, Outage.NONE).amperes("b")).isZero();
    }

    @Test
    void aSupplyThatIsLowerByMoreThanTheDiodesDifferGivesNothing() {
        NetworkSolution solution = normal(fed(5.2, 0.6, 5.05, 0.4), Outage.NONE); // 4.6 against 4.65
        assertThat(solution.carrier("main").orElseThrow().from()).isEqualTo("b");
        assertThat(solution.amperes("a")).isZero();
        NetworkSolution other = normal(fed(5.2, 0.6, 4.95, 0.4), Outage.NONE); // 4.6 against 4.55
        assertThat(other.amperes("b")).isZero();
    }

    @Test
    void whenTheHigherSupplyFailsTheVoltageStepsToTheOthers() {
        Build build = fed(5.4, 0.4, 5, 0.3);
        assertThat(normal(build, Outage.NONE).volts("main")).isCloseTo(5, within(1e-12));
        assertThat(normal(build, Outage.ofSource("a")).volts("main")).isCloseTo(4.7, within(1e-12));
        assertThat(normal(build, Outage.ofElement(new ElementAt("a-main", 0))).volts("main"))
                .isCloseTo(4.7, within(1e-12));
        assertThat(normal(build, Outage.ofRail("main")).isDark("main")).isTrue();
    }

    @Test
    void withNothingDrawnADiodeIsNotCountedOnToHoldTheVoltageDown() {
        NetworkStatement statement = NetworkStatement.of(PowerNetwork.of(fed(5.7, 0.4, 5.2, 0.4)));

        assertThat(statement.rails().get(0).highestV()).isCloseTo(5.7, within(1e-12));
        assertThat(statement.loads().get(0).verdict())
                .as("the load bears 5.5 V")
                .isEqualTo(Verdict.BREAKS);
    }

    @Test
    void aRailThatIsStillFedMayYetBeDark() {
        Build build = fed(5.4, 0.4, 4.8, 0.4); // 4.4 V of the second do not do for the load's 4.5 V
        NetworkSolution left = normal(build, Outage.ofSource("a"));
        assertThat(left.isDark("main")).isFalse();
        assertThat(left.loads().get(0).isDark()).isTrue();
        assertThat(normal(build, Outage.NONE).loads().get(0).isDark()).isFalse();
    }

    @Test
    void oneOfTwoSideBySideGoneLeavesTheOtherToCarryAll() {
        FeedElement pair =
                new FeedElement("Plugs", Kind.CONNECTOR, 5.0, null, 2, Sharing.JOINED, 100.0, null, null, null, null);
        Build build = build(
                List.of(bench("a", 5)),
                List.of(redundant("main", 5, 4, 6)),
                List.of(feed("a", "main", pair)),
                part("L", constantCurrent("main", 3, 3)));
        assertThat(normal(build, Outage.NONE).volts("main")).isCloseTo(5 - 0.15, within(1e-12));
        NetworkSolution left = normal(build, Outage.ofElement(new ElementAt("a-main", 0)));
        assertThat(left.volts("main")).isCloseTo(5 - 0.3, within(1e-12));
        assertThat(left.flows(build.power().feeds().get(0)).get(0).ofOneA()).isEqualTo(3);
    }
}
