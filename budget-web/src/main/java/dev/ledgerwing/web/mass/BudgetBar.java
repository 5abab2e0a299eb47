package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The mass as a bar against its target, in units of a drawing {@value #WIDTH} wide: basic mass, growth, booking, then the margin
 * to the target or what lies over it. Null: not there, or too far away to be drawn.
 *
 * @param booking what is booked; its own span, since it may be of either sign
 * @param heaviest where the heaviest flight case ends, if a ceiling is drawn and that case is not the one the bar shows
 * @param words the same in words
 */
record BudgetBar(
        Span basic,
        Span growth,
        @Nullable Span booking,
        @Nullable Span margin,
        @Nullable Span over,
        @Nullable Double target,
        @Nullable Double ceiling,
        @Nullable Double heaviest,
        String words) {

    static final double WIDTH = 1000;

    /** A ceiling further away than this many times the mass would squeeze everything else. */
    private static final double NEAR = 1.35;

    private static final double ROOM = 1.03;

    /** A stretch of the bar. */
    record Span(double x, double width) {}

    static BudgetBar of(MassStatement mass, Figures figures) {
        Mass target = mass.build().budget().targetMass();
        Mass ceiling = nearCeiling(mass);
        Mass heaviest = ceiling == null || mass.heaviestFlight().loadCase().design()
                ? null
                : mass.heaviestFlight().predicted();
        Mass built = mass.basic().plus(mass.growth());
        Scale scale = new Scale(largest(built, mass.predicted(), target, ceiling, heaviest));
        return new BudgetBar(
                scale.span(Mass.ZERO, mass.basic()),
                scale.span(mass.basic(), built),
                mass.booking().mg() == 0 ? null : scale.span(built, mass.predicted()),
                target == null || over(mass, target) ? null : scale.span(mass.predicted(), target),
                target == null || !over(mass, target) ? null : scale.span(target, mass.predicted()),
                scale.place(target),
                scale.place(ceiling),
                scale.place(heaviest),
                words(mass, figures));
    }

    private static boolean over(MassStatement mass, Mass target) {
        return mass.predicted().compareTo(target) > 0;
    }

    private static @Nullable Mass nearCeiling(MassStatement mass) {
        MassBudget budget = mass.build().budget();
        Mass ceiling = budget.ceilingMass();
        double whole = largest(
                mass.predicted(), budget.targetMass(), mass.heaviestFlight().predicted());
        return ceiling != null && ceiling.mg() <= NEAR * whole ? ceiling : null;
    }

    private static double largest(@Nullable Mass... masses) {
        double largest = 1;
        for (Mass mass : masses) {
            largest = mass == null ? largest : Math.max(largest, (double) mass.mg());
        }
        return largest;
    }

    private record Scale(double wholeMg) {

        Span span(Mass from, Mass to) {
            double start = at(Math.min(from.mg(), to.mg()));
            return new Span(start, Math.round(10 * (at(Math.max(from.mg(), to.mg())) - start)) / 10.0);
        }

        @Nullable
        Double place(@Nullable Mass mass) {
            return mass == null ? null : at(mass.mg());
        }

        private double at(long mg) {
            return Math.round(10 * WIDTH * Math.max(0, mg) / (ROOM * wholeMg)) / 10.0;
        }
    }

    private static String words(MassStatement mass, Figures figures) {
        String least = mass.total().isComplete() ? "" : "at least ";
        String parts = "Predicted mass " + least + figures.mass(mass.predicted()) + ": basic mass " + least
                + figures.mass(mass.basic()) + ", growth allowance " + figures.mass(mass.growth())
                + (mass.booking().mg() == 0 ? "" : ", booking " + figures.signedMass(mass.booking())) + ". ";
        return parts + mass.margin().map(margin -> against(margin, figures)).orElse("No target set yet.");
    }

    private static String against(MassMargin margin, Figures figures) {
        String target = "Target " + figures.mass(margin.target()) + ", ";
        return margin.isBroken()
                ? target + "over it by " + figures.mass(margin.predicted().minus(margin.target())) + "."
                : target + "margin " + figures.mass(margin.mass()) + ".";
    }
}
