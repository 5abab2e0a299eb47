package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What the airframe may weigh.
 *
 * @param targetMass what the team promised itself, all up; null = no target set yet
 * @param ceilingMass a limit somebody else sets; optional
 * @param ceilingIs how the ceiling is meant; needed with a ceiling
 * @param reservePercent margin wanted at this stage in per cent of the target; null = the default of the stage
 */
public record MassBudget(
        @Nullable Mass targetMass,
        @Nullable Mass ceilingMass,
        @Nullable CeilingIs ceilingIs,
        @Nullable Double reservePercent)
        implements FieldGroup {

    /** Whether a mass equal to the ceiling is still allowed. */
    public enum CeilingIs {
        BELOW("below"),
        AT_MOST("at most");

        private final String words;

        CeilingIs(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public MassBudget {
        Check.mass("targetMassG", targetMass);
        Check.require(targetMass == null || targetMass.mg() > 0, "targetMassG must be above 0 g, was 0 g");
        Check.mass("ceilingMassG", ceilingMass);
        Check.require(ceilingMass == null || ceilingMass.mg() > 0, "ceilingMassG must be above 0 g, was 0 g");
        Check.require(
                (ceilingMass == null) == (ceilingIs == null),
                "ceilingMassG and ceilingIs belong together: give both or neither");
        Check.within("reservePercent", reservePercent, 0, 90, " %");
    }
}
