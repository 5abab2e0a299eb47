package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * What brings one voltage down, or up, to another. Null = not known.
 *
 * @param efficiencyPercent of a switching one, 1 to 100
 * @param dropoutV how far the input must stay above the output
 * @param quiescentA what it draws itself
 */
public record Regulator(
        Type type,
        double outputV,
        @Nullable Double efficiencyPercent,
        @Nullable Double dropoutV,
        @Nullable Double minInputV,
        @Nullable Double maxInputV,
        @Nullable Double quiescentA) {

    /** How it works. */
    public enum Type {
        LINEAR,
        SWITCHING
    }

    public Regulator {
        Check.within("outputV", outputV, 0.1, 1000, " V");
        Check.within("efficiencyPercent", efficiencyPercent, 1, 100, " %");
        Check.within("dropoutV", dropoutV, 0, 100, " V");
        Check.within("minInputV", minInputV, 0, 1000, " V");
        Check.within("maxInputV", maxInputV, 0, 1000, " V");
        Check.within("quiescentA", quiescentA, 0, 100, " A");
        Check.require(
                minInputV == null || maxInputV == null || minInputV < maxInputV,
                "minInputV must be less than maxInputV");
    }
}
