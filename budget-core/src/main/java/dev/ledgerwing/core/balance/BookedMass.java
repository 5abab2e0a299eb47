package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Booking;
import org.jspecify.annotations.Nullable;

/**
 * A booking where it acts. One without moments acts at the CG of what was weighed, the assembly or the whole, and may sit anywhere
 * between the outermost stations of that: a rectangular distribution.
 *
 * @param assembly code of the assembly that was weighed; null = the whole airframe
 * @param sum nothing where no moments are known and nothing is placed that it could sit amid
 * @param arm standard uncertainty of where it sits: the width of what was weighed / sqrt(12) along each axis (JCGM 100:2008, 4.3.7); 0
 *     where the scales said it
 */
public record BookedMass(@Nullable String assembly, Booking booking, BalanceSum sum, CgUncertainty arm) {

    /** Whether the scales said where it sits, not only how much it is. */
    public boolean isPlaced() {
        return booking.moments() != null;
    }
}
