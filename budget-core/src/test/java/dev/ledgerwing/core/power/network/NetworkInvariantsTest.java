package dev.ledgerwing.core.power.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.Supplies;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NetworkInvariantsTest {

    private static final double RELATIVE = 1e-9;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 400);
    }

    private static Stream<NetworkSolution> solutions(Build build) {
        PowerNetwork network = PowerNetwork.of(build);
        NetworkCase situation = network.on(network.occasions().get(0));
        return Stream.of(Charge.values())
                .flatMap(charge ->
                        Stream.of(LoadLevel.values()).flatMap(level -> situation.every(charge, level).stream()));
    }

    private static String railOf(LoadFlow flow) {
        return Objects.requireNonNull(flow.load().load().rail());
    }

    private static PowerNetwork network(Build build) {
        return PowerNetwork.of(build);
    }

    @Test
    void theSeedsHoldSuppliesThatStandAndSuppliesThatCollapse() {
        List<Boolean> collapsed = seeds().mapToObj(RandomSupplies::of)
                .map(build ->
                        solutions(build).anyMatch(each -> !each.collapsed().isEmpty()))
                .toList();
        assertThat(collapsed.stream().filter(each -> each).count()).isBetween(60L, 300L);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatFlowsIntoARailFlowsOutOfIt(long seed) {
        Build build = RandomSupplies.of(seed);
        PowerNetwork network = network(build);
        solutions(build).forEach(solution -> {
            for (Rail rail : network.rails()) {
                double out = solution.loads().stream()
                                .filter(flow ->
                                        rail.code().equals(flow.load().load().rail()))
                                .mapToDouble(LoadFlow::amperes)
                                .sum()
                        + network.feedsFrom(rail.code()).stream()
                                .mapToDouble(solution::inputAmperes)
                                .sum();
                double in = solution.amperes(rail.code());
                assertThat(in).isCloseTo(out, within(RELATIVE * (1 + out)));
            }
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatTheSourcesGiveIsWhatLoadsTakeAndElementsLose(long seed) {
        Build build = RandomSupplies.of(seed);
        PowerNetwork network = network(build);
        solutions(build).forEach(solution -> {
            double in = network.sources().stream()
                    .mapToDouble(source -> solution.amperes(source.code()) * solution.volts(source.code()))
                    .sum();
            double out = solution.loads().stream()
                    .mapToDouble(flow -> flow.amperes() * solution.volts(railOf(flow)))
                    .sum();
            double lost = network.feeds().stream()
                    .flatMap(feed -> solution.flows(feed).stream())
                    .mapToDouble(ElementFlow::heatW)
                    .sum();
            assertThat(in).isCloseTo(out + lost, within(RELATIVE * (1 + in)));
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noElementGivesMoreThanItTakes(long seed) {
        Build build = RandomSupplies.of(seed);
        List<Feed> feeds = build.power().feeds();
        solutions(build)
                .forEach(solution -> feeds.stream()
                        .flatMap(feed -> solution.flows(feed).stream())
                        .forEach(flow -> assertThat(flow.heatW()).isGreaterThanOrEqualTo(-RELATIVE)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreLoadNeverRaisesAMarginNorAVoltage(long seed) {
        Build build = RandomSupplies.of(seed);
        Build more = withMore(build, new Random(seed));
        NetworkStatement before = NetworkStatement.of(network(build));
        NetworkStatement after = NetworkStatement.of(network(more));
        if (!after.collapses().isEmpty()) {
            return; // with nothing left to compare
        }
        assertThat(before.collapses()).isEmpty();
        for (int i = 0; i < before.elements().size(); i++) {
            assertThat(after.elements().get(i).continuousA())
                    .isGreaterThanOrEqualTo(before.elements().get(i).continuousA() * (1 - RELATIVE) - RELATIVE);
            assertThat(after.elements().get(i).peakA())
                    .isGreaterThanOrEqualTo(before.elements().get(i).peakA() * (1 - RELATIVE) - RELATIVE);
        }
        for (int i = 0; i < before.sources().size(); i++) {
            assertThat(after.sources().get(i).continuousA())
                    .isGreaterThanOrEqualTo(before.sources().get(i).continuousA() * (1 - RELATIVE) - RELATIVE);
        }
        assertThat(lowest(after))
                .zipSatisfy(lowest(before), (now, then) -> assertThat(now).isLessThanOrEqualTo(then + RELATIVE));
    }

    /**
     * Of each feed alone. With the feeds that carry in the ordinary way a voltage may rise under more load: when another feed takes over,
     * the one that carried before is relieved, and so is what else hangs on it.
     */
    private static List<Double> lowest(NetworkStatement statement) {
        return statement.rails().stream()
                .flatMap(rail -> rail.legs().stream())
                .map(RailState.Leg::lowestV)
                .toList();
    }

    /** One load more. */
    private static Build withMore(Build build, Random random) {
        List<PartLine> lines = new ArrayList<>(build.lines());
        String rail = build.power()
                .rails()
                .get(random.nextInt(build.power().rails().size()))
                .code();
        lines.add(Supplies.part(
                "more",
                random.nextBoolean()
                        ? Supplies.constantPower(rail, 0.5, 0.6)
                        : Supplies.constantCurrent(rail, 0.5, 0.6)));
        return build.withLines(lines);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theOrderOfFeedsRailsAndLinesChangesNothingThatIsHeldAgainstARating(long seed) {
        Build build = RandomSupplies.of(seed);
        compare(worst(build), worst(mixed(build, shuffled(build.power().feeds(), seed), seed)));
    }

    /** Of feeds that give a rail the same voltage the earlier carries it: those of one rail keep their order. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theOrderOfRailsAndLinesChangesNothingInTheOrdinaryWay(long seed) {
        Build build = RandomSupplies.of(seed);
        List<Feed> feeds = new ArrayList<>(build.power().feeds());
        feeds.sort(Comparator.comparing(Feed::to).reversed());
        compare(normal(build), normal(mixed(build, feeds, seed)));
    }

    private static Build mixed(Build build, List<Feed> feeds, long seed) {
        Power power = build.power();
        return build.withPower(new Power(
                        shuffled(power.sources(), seed),
                        shuffled(power.rails(), seed),
                        feeds,
                        power.rules(),
                        power.day()))
                .withLines(shuffled(build.lines(), seed));
    }

    private static void compare(Map<String, Double> inOrder, Map<String, Double> outOfOrder) {
        assertThat(outOfOrder.keySet()).isEqualTo(inOrder.keySet());
        inOrder.forEach((name, value) ->
                assertThat(outOfOrder.get(name)).as(name).isCloseTo(value, within(RELATIVE * (1 + Math.abs(value)))));
    }

    private static Map<String, Double> worst(Build build) {
        NetworkStatement statement = NetworkStatement.of(network(build));
        Map<String, Double> figures = new TreeMap<>();
        statement.elements().forEach(each -> {
            figures.put(each.at() + " continuous", each.continuousA());
            figures.put(each.at() + " peak", each.peakA());
            figures.put(each.at() + " heat", each.heatW());
            figures.put(each.at() + " input", each.lowestInV());
        });
        statement.sources().forEach(each -> figures.put(each.source().code() + " peak", each.peakA()));
        statement.rails().stream()
                .flatMap(rail -> rail.legs().stream())
                .forEach(leg -> figures.put(leg.feed().code(), leg.lowestV()));
        statement.loads().forEach(each -> figures.put(each.load().line().id() + " amperes", each.amperes()));
        return figures;
    }

    private static Map<String, Double> normal(Build build) {
        Map<String, Double> figures = new TreeMap<>();
        NetworkStatement.of(network(build))
                .rails()
                .forEach(each -> each.volts()
                        .forEach(volts -> figures.put(each.rail().code() + " " + volts.charge(), volts.peakV())));
        return figures;
    }

    private static <T> List<T> shuffled(List<T> list, long seed) {
        List<T> shuffled = new ArrayList<>(list);
        Collections.shuffle(shuffled, new Random(seed));
        return shuffled;
    }
}
