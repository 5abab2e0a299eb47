package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;

/**
 * The difference between scales and ledger that nobody has explained yet, of either sign.
 *
 * @param mass what the scales say more than the ledger
 * @param reason where it comes from, in words
 */
public record Booking(Mass mass, String reason) {

    public Booking {
        Check.within("massG", mass.grams(), -Check.LARGEST_MASS_G, Check.LARGEST_MASS_G, " g");
        Check.name("reason", reason);
    }
}
