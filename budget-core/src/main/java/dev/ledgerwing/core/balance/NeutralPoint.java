package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.Tail;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The station at which, with controls fixed, the pitching moment no longer changes with the angle of attack: h_n = h_ac + K (l'/c) /
 * (1 + K) + body shift, in chords behind the leading edge of the MAC, with h_ac = 0.25. An estimate from the shape: the first
 * flight starts at the forward end of the band.
 *
 * @param stabiliser null = there is none, a flying wing
 * @param bodyShiftPercentMac how far body and propeller move it, aft positive
 */
public record NeutralPoint(Planform wing, @Nullable StabiliserLift stabiliser, double bodyShiftPercentMac) {

    /** Aerodynamic centre of the wing, in per cent of the MAC: thin-aerofoil theory. */
    static final double AERODYNAMIC_CENTRE_PERCENT = 25;

    /** Ledgerwing's own choice for a body ahead of the wing; from no publication. A record may say otherwise. */
    public static final double BODY_SHIFT_PERCENT_MAC = -5;

    /** Empty without a wing that is seen from above. */
    public static Optional<NeutralPoint> of(Geometry geometry) {
        return Optional.ofNullable(geometry.wing())
                .flatMap(Planform::of)
                .map(wing -> of(wing, geometry.tail(), geometry.bodyShiftPercentMac()));
    }

    private static NeutralPoint of(Planform wing, @Nullable Tail tail, @Nullable Double bodyShiftPercentMac) {
        return new NeutralPoint(
                wing,
                tail == null ? null : StabiliserLift.of(wing, tail),
                bodyShiftPercentMac == null ? BODY_SHIFT_PERCENT_MAC : bodyShiftPercentMac);
    }

    public double percentMac() {
        double shift = stabiliser == null ? 0 : stabiliser.neutralPointShift();
        return AERODYNAMIC_CENTRE_PERCENT + 100 * shift + bodyShiftPercentMac;
    }

    public double xMm() {
        return wing.xMm(percentMac());
    }

    /** The static margin in per cent of the MAC with the CG at a station: h_n - h, positive ahead of the neutral point. */
    public double staticMarginPercent(double cgXMm) {
        return percentMac() - wing.percentMac(cgXMm);
    }

    public boolean isCanard() {
        return stabiliser != null && stabiliser.isCanard();
    }

    /** What the estimate leaves out, in a sentence for whoever flies by it. */
    public String caution() {
        if (stabiliser == null) {
            return "An estimate from the wing alone: draw the stabiliser if there is one, and make the first flight at the forward end.";
        }
        return isCanard()
                ? "An estimate that leaves out what the canard does to the flow over the wing, which moves it forward: make the"
                        + " first flight at the forward end."
                : "An estimate from the shape: make the first flight at the forward end.";
    }
}
