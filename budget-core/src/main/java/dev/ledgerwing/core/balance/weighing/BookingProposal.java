package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What to book after a weigh-in.
 *
 * @param assembly code of the assembly that it is booked for; null = the airframe
 * @param before what was booked for it; null = nothing
 * @param proposed what makes the ledger weigh what the scales say, in place of {@code before}; null = nothing is left to book
 * @param advised whether the difference is more than the scales can be off
 * @param ifBooked all bookings with {@code proposed} among them
 * @param ifCleared all bookings with none for what was weighed
 */
public record BookingProposal(
        @Nullable String assembly,
        @Nullable Booking before,
        @Nullable Booking proposed,
        boolean advised,
        Books ifBooked,
        Books ifCleared) {

    /** What the scales say more than lines and bookings together: what is new about it. */
    public Mass further() {
        return mass(proposed).minus(mass(before));
    }

    private static Mass mass(@Nullable Booking booking) {
        return booking == null ? Mass.ZERO : booking.mass();
    }
}
