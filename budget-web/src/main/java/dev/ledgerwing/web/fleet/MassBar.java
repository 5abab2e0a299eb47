package dev.ledgerwing.web.fleet;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The mass of an airframe as a bar against its target, in units of a drawing {@value #WIDTH} wide. The target stands at the
 * same place in every row, so that rows compare by eye.
 *
 * @param basic width of the basic mass, growth of what is expected on top of it, target place of the target; null = none set
 */
record MassBar(double basic, double growth, @Nullable Double target) {

    static final double WIDTH = 200;
    private static final double TARGET_AT = 170;

    static MassBar of(Mass basic, Mass predicted, @Nullable Mass target) {
        double whole = target == null ? Math.max(predicted.mg(), 1) : target.mg();
        double basicWidth = width(basic, whole);
        return new MassBar(
                basicWidth, Math.max(0, width(predicted, whole) - basicWidth), target == null ? null : TARGET_AT);
    }

    private static double width(Mass mass, double wholeMg) {
        double exact = Math.max(0, Math.min(WIDTH, TARGET_AT * mass.mg() / wholeMg));
        return Math.round(exact * 10) / 10.0;
    }
}
