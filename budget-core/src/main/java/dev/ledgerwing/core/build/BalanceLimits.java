package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The band the centre of gravity is allowed in, declared in per cent of the mean aerodynamic chord or in millimetres aft of the
 * datum: one pair or the other.
 */
public record BalanceLimits(
        @Nullable Double forwardPercentMac,
        @Nullable Double aftPercentMac,
        @Nullable Length forwardX,
        @Nullable Length aftX) {

    public BalanceLimits {
        Check.within("forwardPercentMac", forwardPercentMac, -500, 500, " %");
        Check.within("aftPercentMac", aftPercentMac, -500, 500, " %");
        Check.coordinate("forwardXMm", forwardX);
        Check.coordinate("aftXMm", aftX);
        Check.require(
                (forwardPercentMac == null) == (aftPercentMac == null) && (forwardX == null) == (aftX == null),
                "a balance limit needs both ends, the forward and the aft one");
        Check.require(
                (forwardPercentMac == null) != (forwardX == null),
                "balance limits are given in per cent of the chord or in millimetres, not both");
        Check.require(
                forwardPercentMac == null || aftPercentMac == null || forwardPercentMac < aftPercentMac,
                "the forward limit must lie ahead of the aft one, was " + forwardPercentMac + " % and " + aftPercentMac
                        + " %");
        Check.require(
                forwardX == null || aftX == null || forwardX.compareTo(aftX) < 0,
                "the forward limit must lie ahead of the aft one, was " + (forwardX == null ? "" : forwardX.mm())
                        + " mm and " + (aftX == null ? "" : aftX.mm()) + " mm");
    }

    public static BalanceLimits ofPercentMac(double forward, double aft) {
        return new BalanceLimits(forward, aft, null, null);
    }

    public static BalanceLimits ofStations(Length forward, Length aft) {
        return new BalanceLimits(null, null, forward, aft);
    }
}
