package dev.ledgerwing.core.power.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.hipparchus.exception.MathIllegalStateException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The solver's answers against those of a general solver that knows neither trees nor monotone convergence. */
class SecondSolutionTest {

    private static final double NEAR_V = 1e-6;

    /** Now and then a general solver gets stuck; more often than this it would be no check. */
    private static final double LEAST_SHARE_FOUND = 0.95;

    @ParameterizedTest(name = "seeds {0} to {0} + 24")
    @ValueSource(longs = {1, 26, 51, 76, 101, 126, 151, 176, 201, 226, 251, 276})
    void aGeneralSolverFindsTheSameVoltagesAlsoWithElementsOut(long firstSeed) {
        List<Boolean> found = LongStream.range(firstSeed, firstSeed + 25)
                .boxed()
                .flatMap(seed -> compared(RandomSupplies.of(seed), seed))
                .toList();
        assertThat(found).hasSizeGreaterThan(150);
        assertThat(found.stream().filter(each -> each).count())
                .isGreaterThan(Math.round(LEAST_SHARE_FOUND * found.size()));
    }

    /** Whether the general solver found anything, for each solution of a supply that stands. */
    private static Stream<Boolean> compared(Build build, long seed) {
        PowerNetwork network = PowerNetwork.of(build);
        return outages(network, new Random(seed)).stream()
                .map(outage -> network.on(network.occasions().get(0), outage))
                .flatMap(situation -> solutions(situation).stream())
                .filter(solution -> solution.collapsed().isEmpty())
                .map(solution -> isFoundAndTheSame(network, solution, seed));
    }

    private static List<Outage> outages(PowerNetwork network, Random random) {
        List<Outage> outages = new ArrayList<>(List.of(Outage.NONE));
        outages.add(Outage.ofSource(
                network.sources().get(random.nextInt(network.sources().size())).code()));
        outages.add(Outage.ofFeed(
                network.feeds().get(random.nextInt(network.feeds().size())).code()));
        network.feeds().stream()
                .filter(feed -> !feed.elements().isEmpty())
                .findFirst()
                .ifPresent(feed -> outages.add(Outage.ofElement(new ElementAt(feed.code(), 0))));
        return outages;
    }

    private static List<NetworkSolution> solutions(NetworkCase situation) {
        return Stream.of(Charge.FULL, Charge.EMPTY)
                .flatMap(charge -> situation.every(charge, LoadLevel.CONTINUOUS).stream())
                .limit(6)
                .toList();
    }

    private static boolean isFoundAndTheSame(PowerNetwork network, NetworkSolution solution, long seed) {
        SecondSolution second = new SecondSolution(network, solution);
        double[] found = solve(second);
        for (int i = 0; found.length > 0 && i < second.nodes().size(); i++) {
            String node = second.nodes().get(i);
            assertThat(solution.volts(node)).as("seed %d, %s", seed, node).isCloseTo(found[i], within(NEAR_V));
        }
        return found.length > 0;
    }

    private static double[] solve(SecondSolution second) {
        try {
            return second.solve();
        } catch (MathIllegalStateException e) {
            return new double[0];
        }
    }
}
