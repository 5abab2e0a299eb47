package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.Inertia;
import dev.ledgerwing.core.balance.InertiaTensor;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;

/**
 * Moments and products of inertia of the design case, ready to be shown; in kg m² in any member's units.
 *
 * @param atLeast whether the true moments are above these
 * @param withoutSize names of the heavy parts whose size is not known
 */
record InertiaView(List<Row> rows, boolean atLeast, String withoutSize, String convention) {

    record Row(String name, String value) {}

    static InertiaView of(Inertia inertia) {
        InertiaTensor about = inertia.aboutCg();
        return new InertiaView(
                List.of(
                        row("Ixx, roll", about.ixx()),
                        row("Iyy, pitch", about.iyy()),
                        row("Izz, yaw", about.izz()),
                        row("Ixy", about.ixy()),
                        row("Ixz", about.ixz()),
                        row("Iyz", about.iyz())),
                inertia.isAtLeast(),
                String.join(
                        ", ",
                        inertia.withoutSize().stream()
                                .map(each -> each.row().name())
                                .toList()),
                InertiaTensor.CONVENTION);
    }

    private static Row row(String name, double kgM2) {
        return new Row(name, Figures.fixed(kgM2, 4) + "\u2009kg\u2009m²");
    }
}
