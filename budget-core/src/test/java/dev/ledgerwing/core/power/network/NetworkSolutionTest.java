package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.constantPower;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.linear;
import static dev.ledgerwing.core.power.Supplies.pack;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.resistance;
import static dev.ledgerwing.core.power.Supplies.switching;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NetworkSolutionTest {

    private static NetworkSolution solve(Build build, Charge charge) {
        PowerNetwork network = PowerNetwork.of(build);
        return network.on(network.occasions().get(0)).normal(charge, LoadLevel.CONTINUOUS);
    }

    private static ElementFlow only(NetworkSolution solution, Feed feed) {
        assertThat(solution.flows(feed)).hasSize(1);
        return solution.flows(feed).get(0);
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({"FULL, 19.8", "NOMINAL, 22.5"})
    void aMotorOf250WattsOnThreeCellsDrawsMoreAsThePackRunsDown(Charge charge, double amperes) {
        Build build = build(
                List.of(pack("p", 3, 0)),
                List.of(rail("drive", 11.1)),
                List.of(feed("p", "drive")),
                part("M", constantPower("drive", 250 / 11.1, 250 / 11.1)));
        assertThat(solve(build, charge).amperes("p")).isCloseTo(amperes, within(0.05));
    }

    /** Worked example of an ORing diode, "A Low Loss Replacement for an ORing Diode" (Linear Technology): 4.5 W, 9 % of 50 W. */
    @Test
    void aDiodeAtTenAmperesOfFiveVoltsLosesNinePerCent() {
        Feed feed = feed("b", "main", diode(0.45));
        NetworkSolution solution = solve(
                build(
                        List.of(bench("b", 5)),
                        List.of(rail("main", 5)),
                        List.of(feed),
                        part("L", constantCurrent("main", 10, 10))),
                Charge.NOMINAL);
        ElementFlow flow = only(solution, feed);
        assertThat(flow.heatW()).isCloseTo(4.5, within(1e-9));
        assertThat(100 * flow.heatW() / (flow.inV() * flow.inA())).isCloseTo(9, within(1e-9));
    }

    /** The same source: a switch of 3 mohm in place of the diode loses 0.3 W, 0.03 V, 0.6 %. */
    @Test
    void threeMilliohmInItsPlaceLoseATenthOfThat() {
        Feed feed = feed("b", "main", resistance(3));
        NetworkSolution solution = solve(
                build(
                        List.of(bench("b", 5)),
                        List.of(rail("main", 5)),
                        List.of(feed),
                        part("L", constantCurrent("main", 10, 10))),
                Charge.NOMINAL);
        ElementFlow flow = only(solution, feed);
        assertThat(flow.heatW()).isCloseTo(0.3, within(1e-9));
        assertThat(flow.dropV()).isCloseTo(0.03, within(1e-9));
    }

    /** A published example of regulators in models: 5 V at 1 A from two and from three cells, 2.4 W and 6.1 W. */
    @ParameterizedTest
    @CsvSource({"7.4, 2.4", "11.1, 6.1"})
    void aLinearRegulatorTurnsTheDifferenceIntoHeat(double inV, double heatW) {
        Feed feed = feed("b", "main", linear(5, 1));
        NetworkSolution solution = solve(
                build(
                        List.of(bench("b", inV)),
                        List.of(rail("main", 5)),
                        List.of(feed),
                        part("L", constantCurrent("main", 1, 1))),
                Charge.NOMINAL);
        assertThat(only(solution, feed).heatW()).isCloseTo(heatW, within(1e-9));
        assertThat(solution.volts("main")).isEqualTo(5);
    }

    /** By derivation: E = 10 V behind R = 1 ohm gives at most V^2/(4R) = 25 W; at P the voltage is E/2 + sqrt(E^2/4 - R P). */
    @ParameterizedTest
    @CsvSource({"1, 9.8989795", "16, 8", "24, 6", "24.99, 5.1", "24.9999999, 5.000316"})
    void theUpperSolutionIsFoundUpToTheNose(double watts, double volts) {
        NetworkSolution solution = solve(atTheNose(watts), Charge.NOMINAL);
        assertThat(solution.volts("main")).isCloseTo(volts, within(1e-6));
        assertThat(solution.collapsed()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"25.0000001", "25.01", "26", "100", "1000"})
    void beyondTheNoseTheSupplyCollapses(double watts) {
        NetworkSolution solution = solve(atTheNose(watts), Charge.NOMINAL);
        assertThat(solution.collapsed()).extracting("code").containsExactly("b");
        assertThat(solution.volts("main")).isZero();
        assertThat(solution.amperes("main")).isZero();
    }

    private static Build atTheNose(double watts) {
        return build(
                List.of(bench("b", 10)),
                List.of(rail("main", 1)),
                List.of(feed("b", "main", resistance(1000))),
                part("L", constantPower("main", watts, watts)));
    }

    @Test
    void aSwitchingRegulatorDrawsItsPowerFromTheSaggingInput() {
        Feed feed = feed("b", "main", resistance(500), switching(5, 80));
        NetworkSolution solution = solve(
                build(
                        List.of(bench("b", 12)),
                        List.of(rail("main", 5)),
                        List.of(feed),
                        part("L", constantCurrent("main", 2, 2))),
                Charge.NOMINAL);
        double inV = 6 + Math.sqrt(36 - 0.5 * 12.5); // 12.5 W behind 0.5 ohm
        assertThat(solution.flows(feed).get(1).inV()).isCloseTo(inV, within(1e-9));
        assertThat(solution.amperes("b")).isCloseTo(12.5 / inV, within(1e-9));
        assertThat(solution.flows(feed).get(1).heatW()).isCloseTo(2.5, within(1e-9));
    }

    @Test
    void aRegulatorBelowItsDropoutFollowsItsInputDown() {
        Feed feed = feed("b", "main", linear(5, 1));
        NetworkSolution solution = solve(
                build(
                        List.of(bench("b", 5.5)),
                        List.of(rail("main", 5)),
                        List.of(feed),
                        part("L", constantCurrent("main", 2, 2))),
                Charge.NOMINAL);
        assertThat(solution.volts("main")).isCloseTo(4.5, within(1e-12));
    }
}
