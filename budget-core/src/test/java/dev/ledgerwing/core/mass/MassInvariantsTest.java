package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Builds;
import dev.ledgerwing.core.RandomBuilds;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MassInvariantsTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void splittingALineChangesNoDigitOfTheBasicMass(long seed) {
        Build build = new RandomBuilds(seed).next();
        Random random = new Random(seed);
        List<PartLine> split = new ArrayList<>();
        for (PartLine line : build.lines()) {
            split.addAll(split(line, random));
        }
        assertThat(split).hasSizeGreaterThan(build.lines().size());
        assertThat(MassStatement.of(build.withLines(split)).basic())
                .isEqualTo(MassStatement.of(build).basic());
    }

    /** By quantity where there are several pieces; a single piece into two unequal ones. */
    private static List<PartLine> split(PartLine line, Random random) {
        if (line.quantity() > 1) {
            int part = 1 + random.nextInt(line.quantity() - 1);
            return List.of(
                    Builds.line(line.id(), line.category(), part, line.mass()),
                    Builds.line(line.id() + "b", line.category(), line.quantity() - part, line.mass()));
        }
        Mass unit = line.mass().unitMass();
        if (unit == null) {
            return List.of(line, line.withId(line.id() + "b"));
        }
        Mass part = new Mass(unit.mg() * random.nextInt(100) / 100);
        return List.of(
                Builds.line(
                        line.id(),
                        line.category(),
                        1,
                        LineMass.of(part, line.mass().basis())),
                Builds.line(
                        line.id() + "b",
                        line.category(),
                        1,
                        LineMass.of(unit.minus(part), line.mass().basis())));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void addingMassNeverRaisesTheMargin(long seed) {
        RandomBuilds random = new RandomBuilds(seed);
        Build build = random.next();
        for (int added = 0; added < 10; added++) {
            List<PartLine> more = new ArrayList<>(build.lines());
            more.add(random.knownLine("N" + added));
            Build heavier = build.withLines(more);
            assertThat(margin(heavier)).isLessThanOrEqualTo(margin(build));
            build = heavier;
        }
    }

    private static Mass margin(Build build) {
        return MassStatement.of(build).margin().orElseThrow().mass();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void subtotalsAddUpToTheTotalExactly(long seed) {
        MassStatement statement = MassStatement.of(new RandomBuilds(seed).next());
        for (List<MassGroup> groups : List.of(statement.byAssembly(), statement.byCategory())) {
            assertThat(groups.stream()
                            .mapToLong(group -> group.total().basic().mg())
                            .sum())
                    .isEqualTo(statement.basic().mg());
            assertThat(groups.stream()
                            .mapToLong(group -> group.total().growth().mg())
                            .sum())
                    .isEqualTo(statement.growth().mg());
            assertThat(groups.stream()
                            .mapToInt(group -> group.total().unknown())
                            .sum())
                    .isEqualTo(statement.total().unknown());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theBandIsNeverNarrowerThanIndependenceNorWiderThanFullCorrelationAllows(long seed) {
        MassForecast forecast = MassForecast.of(new RandomBuilds(seed).next());
        RowUncertainty each =
                new RowUncertainty(forecast.statement().build().judgedBy().massUncertainty());
        double[] all =
                forecast.statement().rows().stream().mapToDouble(each::grams).toArray();
        double squares = 0;
        double sum = 0;
        for (double u : all) {
            squares += u * u;
            sum += u;
        }
        assertThat(forecast.standardUncertaintyG()).isBetween(Math.sqrt(squares) * (1 - 1e-12), sum * (1 + 1e-12));
    }
}
