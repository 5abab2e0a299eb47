package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MassInvariantsTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void splittingALineChangesNoDigitOfTheBasicMass(long seed) {
        Build build = Builds.seeded(seed);
        Random random = new Random(seed);
        List<PartLine> split = new ArrayList<>();
        for (PartLine line : build.lines()) {
            split.addAll(split(line, random));
        }
        assertThat(split).hasSize(2 * build.lines().size());
        assertThat(MassStatement.of(build.withLines(split)).basic())
                .isEqualTo(MassStatement.of(build).basic());
    }

    /** By quantity, or every piece into two unequal ones. */
    private static List<PartLine> split(PartLine line, Random random) {
        Mass unit = line.mass().unitMass();
        if (unit == null || random.nextBoolean()) {
            int some = 1 + random.nextInt(line.quantity() - 1);
            return List.of(part(line, "", some, unit), part(line, "b", line.quantity() - some, unit));
        }
        Mass some = new Mass(unit.mg() * random.nextInt(100) / 100);
        return List.of(part(line, "", line.quantity(), some), part(line, "b", line.quantity(), unit.minus(some)));
    }

    private static PartLine part(PartLine line, String suffix, int quantity, @Nullable Mass unit) {
        LineMass mass = new LineMass(unit, line.mass().basis(), null, null, null);
        return PartLine.named(line.id() + suffix, line.assembly(), line.name(), line.category(), quantity, mass);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void addingMassNeverRaisesTheMargin(long seed) {
        Random random = new Random(seed);
        Build build = Builds.seeded(seed);
        String assembly = build.assemblies().get(0).code();
        for (int added = 0; added < 10; added++) {
            List<PartLine> more = new ArrayList<>(build.lines());
            more.add(PartLine.named(
                    "N" + added,
                    assembly,
                    "New",
                    Builds.pick(random, Category.values()),
                    1 + random.nextInt(9),
                    LineMass.of(new Mass(random.nextInt(500_000)), Builds.pick(random, Basis.values()))));
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
        MassStatement statement = MassStatement.of(Builds.seeded(seed));
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
        MassForecast forecast = MassForecast.of(Builds.seeded(seed).withWeighIns(List.of()));
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
