package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Tail;
import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the geometry of a build says for balance. No band is ever built in: it is declared, or follows from the neutral point
 * and the static margin wanted, or there is none.
 *
 * @param wing null = no wing is drawn, or nothing of it is seen from above; {@code tail} likewise
 * @param declared null = no limits, or in per cent of a wing that is not there
 * @param derived from h_n minus the most to h_n minus the least static margin; null = no neutral point or no margin wanted
 */
public record BalanceShape(
        Geometry geometry,
        @Nullable Planform wing,
        @Nullable Planform tail,
        @Nullable NeutralPoint neutralPoint,
        @Nullable BalanceBand declared,
        @Nullable BalanceBand derived) {

    /** How far the CG may lie off the centre line without a word: Ledgerwing's own choice; from no publication. */
    public static final Length LATERAL_LIMIT = Length.ofMm(5);

    public static BalanceShape of(Geometry geometry) {
        NeutralPoint neutralPoint = NeutralPoint.of(geometry).orElse(null);
        Planform wing = neutralPoint == null ? null : neutralPoint.wing();
        Tail tail = geometry.tail();
        return new BalanceShape(
                geometry,
                wing,
                tail == null ? null : Planform.of(tail.surface()).orElse(null),
                neutralPoint,
                declared(geometry.balanceLimits(), wing),
                derived(geometry.staticMargin(), neutralPoint));
    }

    private static @Nullable BalanceBand declared(@Nullable BalanceLimits limits, @Nullable Planform wing) {
        if (limits == null) {
            return null;
        }
        Length forward = limits.forwardX();
        Length aft = limits.aftX();
        if (forward != null && aft != null) {
            return new BalanceBand(BalanceBand.Source.DECLARED, forward.mm(), aft.mm());
        }
        Double forwardPercent = limits.forwardPercentMac();
        Double aftPercent = limits.aftPercentMac();
        return wing == null || forwardPercent == null || aftPercent == null
                ? null
                : new BalanceBand(BalanceBand.Source.DECLARED, wing.xMm(forwardPercent), wing.xMm(aftPercent));
    }

    private static @Nullable BalanceBand derived(@Nullable StaticMargin margin, @Nullable NeutralPoint neutralPoint) {
        return margin == null || neutralPoint == null
                ? null
                : new BalanceBand(
                        BalanceBand.Source.DERIVED,
                        neutralPoint.wing().xMm(neutralPoint.percentMac() - margin.mostPercent()),
                        neutralPoint.wing().xMm(neutralPoint.percentMac() - margin.leastPercent()));
    }

    /** The band that judges: the declared one, else the derived one; null = there is none. */
    public @Nullable BalanceBand band() {
        return declared == null ? derived : declared;
    }

    /** A station in per cent of the MAC; null without a wing. */
    public @Nullable Double percentMac(double xMm) {
        return wing == null ? null : wing.percentMac(xMm);
    }

    public Length lateralLimit() {
        Length own = geometry.lateralLimit();
        return own == null ? LATERAL_LIMIT : own;
    }
}
