package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The shape that balance is judged by. Everything may be missing: balance works in millimetres without a wing.
 *
 * @param bodyShiftPercentMac how far body and propeller move the neutral point, aft positive; null = the project's own default
 * @param balanceLimits the declared band; null = none declared
 * @param staticMargin the margin wanted to the neutral point; null = none asked for
 * @param noseStructureGPerMm mass of each millimetre that the nose is lengthened by, grams per millimetre
 * @param noseJointX where the nose is cut to be lengthened; what moves with the nose lies ahead of it
 * @param stationUncertainty standard uncertainty of a station that has none of its own; null = the project's own default
 * @param lateralLimit how far the CG may lie off the centre line without a word; null = the project's own default
 */
public record Geometry(
        @Nullable Surface wing,
        @Nullable Tail tail,
        @Nullable Double bodyShiftPercentMac,
        @Nullable BalanceLimits balanceLimits,
        @Nullable StaticMargin staticMargin,
        @Nullable Double noseStructureGPerMm,
        @Nullable Length noseJointX,
        @Nullable Length stationUncertainty,
        @Nullable Length lateralLimit)
        implements FieldGroup {

    /** Standard uncertainty of a station measured with a rule: Ledgerwing's own choice; from no publication. */
    public static final Length STATION_UNCERTAINTY = Length.ofMm(3);

    public static final Geometry NONE = new Geometry(null, null, null, null, null, null, null, null, null);

    public Geometry {
        Check.within("bodyShiftPercentMac", bodyShiftPercentMac, -100, 100, " %");
        Check.within("noseStructureGPerMm", noseStructureGPerMm, 0, 1000, " g/mm");
        Check.coordinate("noseJointXMm", noseJointX);
        Check.extent("stationUncertaintyMm", stationUncertainty);
        Check.extent("lateralLimitMm", lateralLimit);
    }

    /** Standard uncertainty of a station that says nothing of its own. */
    public Length stationUncertaintyInForce() {
        return stationUncertainty == null ? STATION_UNCERTAINTY : stationUncertainty;
    }

    public Geometry withWing(@Nullable Surface changed) {
        return new Geometry(
                changed,
                tail,
                bodyShiftPercentMac,
                balanceLimits,
                staticMargin,
                noseStructureGPerMm,
                noseJointX,
                stationUncertainty,
                lateralLimit);
    }

    public Geometry withBalanceLimits(@Nullable BalanceLimits changed) {
        return new Geometry(
                wing,
                tail,
                bodyShiftPercentMac,
                changed,
                staticMargin,
                noseStructureGPerMm,
                noseJointX,
                stationUncertainty,
                lateralLimit);
    }
}
