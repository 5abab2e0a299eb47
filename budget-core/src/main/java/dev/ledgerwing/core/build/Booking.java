package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The difference between scales and ledger that nobody has explained yet, of either sign.
 *
 * @param mass what the scales say more than the ledger
 * @param reason where it comes from, in words
 * @param moments the difference of the first moments; null = not known, only the mass was compared
 */
public record Booking(Mass mass, String reason, @Nullable Moments moments) {

    public Booking {
        Check.within("massG", mass.grams(), -Check.LARGEST_MASS_G, Check.LARGEST_MASS_G, " g");
        Check.name("reason", reason);
    }

    /** A difference of which nobody knows where it sits. */
    public Booking(Mass mass, String reason) {
        this(mass, reason, null);
    }
}
