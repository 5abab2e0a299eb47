package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Airframes made at random, and scales that weigh them without an error but for the last milligram. */
final class RandomWeighings {

    private static final double[][] POINTS = {{100, 20}, {1300, -600}, {1250, 650}};

    private final Random random;

    RandomWeighings(long seed) {
        random = new Random(seed);
    }

    /** Fitted parts of both assemblies between nose and tail, near the centre line. */
    Build build() {
        List<PartLine> lines = new ArrayList<>();
        for (int i = 0; i < 5 + random.nextInt(20); i++) {
            LineMass mass = LineMass.of(new Mass(1 + random.nextInt(400_000)), pick(Basis.values()));
            PartLine line = Ledgers.line("L" + i, pick(Category.values()), 1 + random.nextInt(3), mass);
            lines.add(Weighings.fitted(random.nextBoolean() ? Ledgers.inWing(line) : line, station()));
        }
        return Ledgers.with(lines);
    }

    private Station station() {
        return new Station(
                new Length(500_000 + random.nextInt(500_000)),
                new Length(random.nextInt(200_000) - 100_000),
                new Length(random.nextInt(300_000) - 100_000));
    }

    private <T> T pick(T[] values) {
        return values[random.nextInt(values.length)];
    }

    /** On three supports of different heights, first {@code firstDeg} nose up and then {@code secondDeg}; null = one weighing. */
    WeighInDraft exactly(LedgerSide truth, double firstDeg, @Nullable Double secondDeg) {
        double[] cg = new double[3];
        for (Axis axis : Axis.values()) {
            double mm = truth.joint().centre(axis).orElseThrow().mm();
            cg[axis == Axis.X ? 0 : axis == Axis.Y ? 1 : 2] = mm;
        }
        List<Station> stands = new ArrayList<>();
        for (double[] point : POINTS) {
            stands.add(new Station(
                    Length.ofMm(point[0] + random.nextInt(50)),
                    Length.ofMm(point[1] + random.nextInt(50)),
                    Length.ofMm(-200 + random.nextInt(50))));
        }
        Mass[] first = carried(stands, cg, truth.mass(), firstDeg);
        Mass[] second = carried(stands, cg, truth.mass(), secondDeg == null ? firstDeg : secondDeg);
        List<Support> supports = new ArrayList<>();
        for (int i = 0; i < stands.size(); i++) {
            supports.add(new Support(
                    "Stand " + i, stands.get(i), first[i], Mass.ZERO, secondDeg == null ? null : second[i]));
        }
        return Weighings.draft(firstDeg, secondDeg, supports.toArray(Support[]::new));
    }

    /** Shares w_i with sum w = 1, sum w h = h of the CG and sum w y = y of the CG, by Cramer's rule. */
    private static Mass[] carried(List<Station> stands, double[] cg, Mass mass, double deg) {
        Pose pose = Pose.noseUp(deg);
        double h = pose.aftMm(cg[0], cg[2]);
        double whole = doubleArea(point(stands.get(0), pose), point(stands.get(1), pose), point(stands.get(2), pose));
        SupportPlan.Point at = new SupportPlan.Point(h, cg[1]);
        Mass[] carried = new Mass[3];
        Mass left = mass;
        for (int i = 0; i < 2; i++) {
            double share = doubleArea(at, point(stands.get(i + 1), pose), point(stands.get((i + 2) % 3), pose)) / whole;
            carried[i] = Mass.ofGrams(mass.grams() * share);
            left = left.minus(carried[i]);
        }
        carried[2] = left;
        return carried;
    }

    private static SupportPlan.Point point(Station at, Pose pose) {
        return new SupportPlan.Point(
                pose.aftMm(at.x().mm(), at.z().mm()), at.y().mm());
    }

    private static double doubleArea(SupportPlan.Point a, SupportPlan.Point b, SupportPlan.Point c) {
        return (b.xMm() - a.xMm()) * (c.yMm() - a.yMm()) - (c.xMm() - a.xMm()) * (b.yMm() - a.yMm());
    }
}
