package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is left below the target: target minus predicted mass (ANSI/AIAA S-120A calls the target the allowable mass). Negative
 * when the target is broken.
 *
 * @param reservePercent the margin wanted at this stage, in per cent of the target
 */
public record MassMargin(Mass target, Mass basic, Mass predicted, double reservePercent) {

    public Mass mass() {
        return target.minus(predicted);
    }

    /** The margin in per cent of {@code denominator}; null where that is not above 0. */
    public @Nullable Double percent(MarginOf denominator) {
        Mass whole = switch (denominator) {
            case BASIC -> basic;
            case PREDICTED -> predicted;
            case TARGET -> target;
        };
        return whole.mg() <= 0 ? null : 100.0 * mass().mg() / whole.mg();
    }

    /** The margin wanted at this stage. */
    public Mass reserve() {
        return target.percent(reservePercent);
    }

    public boolean isBroken() {
        return mass().isNegative();
    }

    /** Whether less is left than this stage wants; a margin equal to the reserve is enough. */
    public boolean isShort() {
        return mass().compareTo(reserve()) < 0;
    }
}
