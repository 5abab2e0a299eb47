package dev.ledgerwing.core.radio.plan;

import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The planner beside a general constraint solver, over the same hundred small radios. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class SolverBench {

    private static final int RADIOS = 100;

    @Benchmark
    public int planner() {
        int weight = 0;
        for (long seed = 1; seed <= RADIOS; seed++) {
            weight += ChannelPlanner.plan(RandomRadio.of(seed)).sharedWeight();
        }
        return weight;
    }

    @Benchmark
    public int solver() {
        int weight = 0;
        for (long seed = 1; seed <= RADIOS; seed++) {
            @Nullable Integer optimum = ChocoPlan.optimum(RandomRadio.of(seed));
            weight += optimum == null ? 0 : optimum / 100;
        }
        return weight;
    }
}
