package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.PartLine;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One rule of placing held against a record.
 *
 * @param key of the rule, the same before and after a change
 * @param subject the rule or the part, in the builder's words
 * @param parts one that stays inside a bay, or two that keep apart
 * @param bay name of the bay; null = the rule keeps two apart
 * @param wantedMm distance wanted; 0 for a bay
 * @param cases the flight cases in which all its parts are aboard
 */
record PlacementCheck(
        String key,
        String subject,
        List<PartLine> parts,
        @Nullable String bay,
        double wantedMm,
        List<PlacedIn> cases) {

    /** Takes up rounding in differences of doubles. */
    private static final double ROUNDING_MM = 1e-9;

    PlacementCheck {
        parts = List.copyOf(parts);
        cases = List.copyOf(cases);
    }

    static PlacementCheck inside(Bay bay, PartLine line, List<PlacedIn> cases) {
        return new PlacementCheck(
                "bay." + bay.code() + "." + line.id(), line.name(), List.of(line), bay.name(), 0, cases);
    }

    static PlacementCheck apart(KeepApart rule, List<PartLine> two, List<PlacedIn> cases) {
        return new PlacementCheck(
                "apart." + rule.id(), rule.name(), two, null, rule.atLeast().mm(), cases);
    }

    /** The case in which it stands worst; empty where no station is known. */
    Optional<PlacedIn> worst() {
        return cases.stream()
                .filter(each -> each.measuredMm() != null)
                .min(Comparator.comparingDouble(PlacementCheck::measuredMm));
    }

    private static double measuredMm(PlacedIn placed) {
        Double measured = placed.measuredMm();
        return measured == null ? Double.POSITIVE_INFINITY : measured;
    }

    /** The least distance, over the cases; infinite where none is known. */
    double leastMm() {
        return worst().map(PlacementCheck::measuredMm).orElse(Double.POSITIVE_INFINITY);
    }

    /** What is left of it; negative = broken. */
    double leftMm() {
        return leastMm() - wantedMm;
    }

    boolean isBroken() {
        return leftMm() < -ROUNDING_MM;
    }

    /** Whether it stands worse than {@code before}, where it may not have been broken. */
    boolean isWorseThan(@Nullable PlacementCheck before, double byMm) {
        return before == null || !before.isBroken() || leftMm() < before.leftMm() - byMm;
    }

    /** Whether it is known in each of its cases, with the size of what a bay holds. */
    boolean isKnown() {
        boolean placed = cases.stream().allMatch(each -> each.measuredMm() != null);
        return placed && (bay == null || isSized());
    }

    boolean isSized() {
        return parts.stream().allMatch(part -> part.place().size() != null);
    }

    /** Whether it stands as in its worst case in some cases only, so that the case needs naming. */
    boolean dependsOnCase() {
        return cases.stream().map(PlacementCheck::measuredMm).distinct().count() > 1;
    }
}
