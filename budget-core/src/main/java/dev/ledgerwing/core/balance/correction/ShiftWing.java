package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Shifts the wing on the drawing with everything that moves with it. Mass and chord move together, and limits declared in millimetres
 * move along: the CG was held against the same part of the chord before.
 *
 * @param by aft; negative is forward
 * @param declared whether the band is a declared one: it stood for another tail arm
 */
public record ShiftWing(Length by, boolean declared) implements CorrectionStep {

    @Override
    public CorrectionKind kind() {
        return CorrectionKind.SHIFT_WING;
    }

    @Override
    public Build on(Build build, Supplier<String> newIds) {
        Geometry geometry = build.geometry();
        return new GroupShift(MovesWith.WING, by)
                .on(build)
                .withGeometry(geometry.withWing(shifted(geometry.wing()))
                        .withBalanceLimits(shifted(geometry.balanceLimits())));
    }

    private @Nullable Surface shifted(@Nullable Surface wing) {
        return wing == null ? null : new Surface(new AlongX(by).of(wing.apex()), wing.mirrored(), wing.panels());
    }

    private @Nullable BalanceLimits shifted(@Nullable BalanceLimits limits) {
        Length forward = limits == null ? null : limits.forwardX();
        Length aft = limits == null ? null : limits.aftX();
        return forward == null || aft == null ? limits : BalanceLimits.ofStations(forward.plus(by), aft.plus(by));
    }

    @Override
    public String sentence(Figures figures) {
        return "Shift the wing " + new AlongX(by).words(figures) + ", with everything that moves with it.";
    }

    @Override
    public Mass cost() {
        return Mass.ZERO;
    }

    @Override
    public double movementMm() {
        return Math.abs(by.mm());
    }

    @Override
    public String subject() {
        return "wing";
    }

    @Override
    public @Nullable String line() {
        return null;
    }

    @Override
    public String key() {
        return "wing." + by.um();
    }

    @Override
    public List<String> declareAgain() {
        return declared
                ? List.of("The limits stood for the old distance between wing and tail: declare them again.")
                : List.of();
    }
}
