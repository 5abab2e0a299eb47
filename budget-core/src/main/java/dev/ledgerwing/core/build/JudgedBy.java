package dev.ledgerwing.core.build;

/**
 * The rules in force when the record was judged. Each revision carries its own, so that editing a team default never rewrites
 * an old verdict.
 */
public record JudgedBy(GrowthTable growth, MassUncertainty massUncertainty, Reserves reserves) implements FieldGroup {

    public static final JudgedBy OWN_CHOICE =
            new JudgedBy(GrowthTable.OWN_CHOICE, MassUncertainty.OWN_CHOICE, Reserves.OWN_CHOICE);
}
