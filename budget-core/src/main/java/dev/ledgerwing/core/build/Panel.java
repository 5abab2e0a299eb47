package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;

/**
 * One straight-tapered panel of a wing or tail.
 *
 * @param span along the panel, one side
 * @param tipOffset leading edge of the tip aft of the leading edge of this panel's own root
 * @param dihedralDeg of the panel itself, not relative to the one inboard; -90 to 90
 */
public record Panel(Length span, Length rootChord, Length tipChord, Length tipOffset, double dihedralDeg) {

    public Panel {
        Check.extent("spanMm", span);
        Check.extent("rootChordMm", rootChord);
        Check.extent("tipChordMm", tipChord);
        Check.coordinate("tipOffsetMm", tipOffset);
        Check.within("dihedralDeg", dihedralDeg, -90, 90, " degrees");
        Check.require(span.um() > 0, "spanMm must be more than 0 mm, was 0 mm");
        Check.require(
                rootChord.um() > 0 || tipChord.um() > 0, "a panel needs a chord above 0 mm at its root or at its tip");
    }
}
