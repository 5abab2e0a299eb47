package dev.ledgerwing.core.power.failure;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.Supplies;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every row of seeded supplies against {@link SweptSupply}, which solves them in another way. */
class FailureTableSeededTest {

    private static final int SUPPLIES = 60;
    private static final List<RadioFunction> FUNCTIONS =
            List.of(Failures.AILERON, Failures.ELEVATOR, Failures.CAMERA, Failures.LIGHT);

    @Test
    void losesWhatAnotherSolutionLoses() {
        int rows = 0;
        int lostByVoltage = 0;
        for (int seed = 0; seed < SUPPLIES; seed++) {
            Build build = new Drawn(new Random(seed)).build();
            Dark before = Dark.of(SweptSupply.whole(build));
            for (FailureRow row : Failures.table(build).rows()) {
                SweptSupply failed = after(build, row.failure());
                Set<String> expected = Dark.of(failed).butNot(before);
                assertThat(ids(row)).as("seed %d, %s", seed, row.failure()).isEqualTo(expected);
                assertThat(Set.copyOf(row.functions()))
                        .as("seed %d, %s", seed, row.failure())
                        .isEqualTo(served(build, expected));
                rows++;
                lostByVoltage += failed.unreached().containsAll(expected) ? 0 : 1;
            }
        }
        assertThat(rows).as("rows compared").isGreaterThan(500);
        assertThat(lostByVoltage).as("rows that reachability alone gets wrong").isGreaterThan(10);
    }

    private static Set<String> ids(FailureRow row) {
        return row.loads().stream().map(dark -> dark.load().line().id()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<RadioFunction> served(Build build, Set<String> lines) {
        return build.lines().stream()
                .filter(line -> lines.contains(line.id()))
                .flatMap(line -> line.serves().stream())
                .map(code -> FUNCTIONS.stream()
                        .filter(function -> function.code().equals(code))
                        .findFirst()
                        .orElseThrow())
                .collect(Collectors.toSet());
    }

    /** Ids of the parts that are dark at continuous and at peak load. */
    private record Dark(Set<String> continuous, Set<String> peak) {

        static Dark of(SweptSupply supply) {
            return new Dark(supply.dark(false), supply.dark(true));
        }

        /** At either load, what is not dark in the other. */
        Set<String> butNot(Dark before) {
            Set<String> newly = new TreeSet<>(continuous);
            newly.removeAll(before.continuous);
            Set<String> atPeak = new TreeSet<>(peak);
            atPeak.removeAll(before.peak);
            newly.addAll(atPeak);
            return newly;
        }
    }

    private static SweptSupply after(Build build, Failure failure) {
        return switch (failure.kind()) {
            case SOURCE_OUT -> new SweptSupply(build, Set.of(failure.code()), "");
            case ELEMENT_OPEN ->
                new SweptSupply(
                        build,
                        Set.of(),
                        failure.code() + "#"
                                + Objects.requireNonNull(failure.at()).index());
            case RAIL_SHORTED -> new SweptSupply(build, SweptSupply.shortedFrom(build, failure.code()), "");
        };
    }

    /** A supply drawn by chance: one to three benches, two to five rails, each fed by one or two from nearer the sources. */
    private record Drawn(Random random) {

        Build build() {
            List<PowerSource> sources = new ArrayList<>();
            List<Rail> rails = new ArrayList<>();
            List<Feed> feeds = new ArrayList<>();
            List<String> nodes = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                sources.add(Supplies.bench("s" + i, 6 + 6 * random.nextDouble()));
                nodes.add("s" + i);
            }
            List<PartLine> lines = new ArrayList<>();
            for (int i = 0; i < 2 + random.nextInt(4); i++) {
                String rail = "r" + i;
                rails.add(Supplies.rail(rail, 5));
                feeds.addAll(feedsInto(rail, nodes));
                nodes.add(rail);
                lines.add(part("p" + i, rail));
            }
            return Failures.build(sources, rails, feeds, List.of(), lines.toArray(PartLine[]::new));
        }

        private List<Feed> feedsInto(String rail, List<String> nodes) {
            List<String> from = new ArrayList<>(nodes);
            List<Feed> feeds = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(2) && !from.isEmpty(); i++) {
                String node = from.remove(random.nextInt(from.size()));
                feeds.add(Supplies.feed(node, rail, elements()));
            }
            return feeds;
        }

        private FeedElement[] elements() {
            List<FeedElement> elements = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                elements.add(
                        switch (random.nextInt(6)) {
                            case 0 -> Supplies.fuse(50);
                            case 1 -> Supplies.diode(0.2 + 0.4 * random.nextDouble());
                            case 2 -> Supplies.linear(4.5 + 2 * random.nextDouble(), 0.3);
                            case 3 -> Supplies.switching(4.5 + 2 * random.nextDouble(), 70 + 25 * random.nextDouble());
                            default -> Supplies.resistance(10 + 150 * random.nextDouble());
                        });
            }
            return elements.toArray(FeedElement[]::new);
        }

        private PartLine part(String id, String rail) {
            double typicalA = 0.2 + 0.8 * random.nextDouble();
            double peakA = typicalA * (1 + random.nextDouble());
            ElectricalLoad load = random.nextBoolean()
                    ? Supplies.constantCurrent(rail, typicalA, peakA)
                    : Supplies.constantPower(rail, typicalA, peakA);
            PartLine part = Supplies.part(id, Supplies.within(3 + 2 * random.nextDouble(), 30, load));
            return Failures.serving(part, FUNCTIONS.get(random.nextInt(FUNCTIONS.size())));
        }
    }
}
