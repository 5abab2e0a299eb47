package dev.ledgerwing.core.radio.plan;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long the planner takes over twenty switched functions and ten phases. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1, time = 1)
@Measurement(iterations = 3, time = 1)
public class PlannerBench {

    @Param({"USUAL", "ALL_TOGETHER", "NONE_TOGETHER", "THREE_STATES", "SIX_POSITIONS"})
    Squeeze squeeze = Squeeze.USUAL;

    @Param({"1", "2", "3"})
    long seed;

    private ChannelProblem problem = Squeeze.USUAL.problem(1);

    @Setup
    public void choose() {
        problem = squeeze.problem(seed);
    }

    @Benchmark
    public PlanAnswer plan() {
        return ChannelPlanner.plan(problem);
    }
}
