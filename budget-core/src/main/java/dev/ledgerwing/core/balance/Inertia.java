package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;

/**
 * Moments of inertia of a load case about its CG, at basic mass. Each piece counts as a cuboid of its size at its station, along
 * the axes; a piece without a size counts as a point. All pieces of a line that is not mirrored sit at the one station.
 *
 * @param mass what it is the inertia of
 * @param withoutSize the rows above {@value #SIZE_WANTED_FROM_PERCENT} per cent of the mass whose size is not known
 * @param unplaced how many rows have no mass or no station and are left out
 */
public record Inertia(InertiaTensor aboutCg, Mass mass, List<PlacedRow> withoutSize, int unplaced) {

    public static final double SIZE_WANTED_FROM_PERCENT = 2;

    private static final double G_PER_KG = 1000;

    public Inertia {
        withoutSize = List.copyOf(withoutSize);
    }

    static Inertia of(CaseBalance aboard, Cg cg) {
        InertiaTensor sum = InertiaTensor.ZERO;
        for (PlacedRow row : aboard.rows()) {
            sum = sum.plus(about(cg, row));
        }
        double enoughG = aboard.basic().mass().grams() * SIZE_WANTED_FROM_PERCENT / 100;
        List<PlacedRow> withoutSize = aboard.rows().stream()
                .filter(row -> row.isPlaced() && row.size() == null && kg(row) * G_PER_KG > enoughG)
                .toList();
        return new Inertia(
                sum,
                aboard.basic().mass(),
                withoutSize,
                aboard.withoutMass().size() + aboard.withoutStation().size());
    }

    private static InertiaTensor about(Cg cg, PlacedRow row) {
        Station station = row.station();
        if (station == null) {
            return InertiaTensor.ZERO;
        }
        double massKg = kg(row);
        double x = station.x().mm() - cg.xMm();
        double y = station.y().mm() - cg.yMm();
        double z = station.z().mm() - cg.zMm();
        double side = row.sideMm(Axis.Y);
        InertiaTensor at = InertiaTensor.ofPoint(massKg / 2, x, y + side, z)
                .plus(InertiaTensor.ofPoint(massKg / 2, x, y - side, z));
        return row.size() == null ? at : at.plus(InertiaTensor.ofCuboid(massKg, row.size()));
    }

    private static double kg(PlacedRow row) {
        return row.sum(MassState.BASIC).mass().grams() / G_PER_KG;
    }

    /** Whether the true moments are above these: a heavy part has no size, or parts are left out. */
    public boolean isAtLeast() {
        return !withoutSize.isEmpty() || unplaced > 0;
    }

    public double massKg() {
        return mass.grams() / G_PER_KG;
    }
}
