package dev.ledgerwing.core;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.WeighedAs;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Builds of every kind from a seed; the same seed gives the same build. */
public final class RandomBuilds {

    private final Random random;

    public RandomBuilds(long seed) {
        random = new Random(seed);
    }

    /** 1 to 60 lines, some of unknown mass, two load cases, now and then a booking; with a target. */
    public Build next() {
        List<PartLine> lines = new ArrayList<>();
        int count = 1 + random.nextInt(60);
        for (int i = 0; i < count; i++) {
            lines.add(line("L" + i, random.nextInt(20) == 0 ? null : randomMass()));
        }
        Build build = Builds.withCases(
                Builds.with(lines),
                Builds.loadCase(
                        "other",
                        Purpose.FLIGHT,
                        List.of("L0"),
                        Builds.extra("Box", random.nextDouble() * 500, pick(Basis.values()))));
        Build aimed = Builds.withTarget(1 + random.nextInt(30_000), null, build);
        return random.nextInt(3) == 0 ? Builds.withBooking(random.nextInt(200) - 100, aimed) : aimed;
    }

    /** A line of known mass. */
    public PartLine knownLine(String id) {
        return line(id, randomMass());
    }

    private PartLine line(String id, @Nullable Mass unit) {
        Basis basis = pick(Basis.values());
        WeighedAs how = basis == Basis.WEIGHED && random.nextBoolean() ? pick(WeighedAs.values()) : null;
        Mass uncertainty = random.nextInt(10) == 0 ? new Mass(random.nextInt(20_000)) : null;
        Double growth = random.nextInt(10) == 0 ? random.nextDouble() * 40 : null;
        PartLine line = Builds.line(
                id,
                pick(Category.values()),
                1 + random.nextInt(8),
                new LineMass(unit, basis, how, uncertainty, growth));
        return random.nextBoolean() ? Builds.inWing(line) : line;
    }

    private Mass randomMass() {
        return new Mass(random.nextInt(900_000));
    }

    private <E> E pick(E[] all) {
        return all[random.nextInt(all.length)];
    }
}
