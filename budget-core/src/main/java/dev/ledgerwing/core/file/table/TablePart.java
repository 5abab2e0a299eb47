package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A row that can be imported.
 *
 * @param row counted from 1
 * @param unitMass mass of one piece; null = not known
 * @param basisGiven whether the row says where the mass comes from; otherwise it counts as guessed
 * @param assembly name of its assembly; null = none given
 * @param state null = none given
 */
public record TablePart(
        int row,
        String name,
        int quantity,
        @Nullable Mass unitMass,
        Basis basis,
        boolean basisGiven,
        Category category,
        CategoryFrom categoryFrom,
        @Nullable String assembly,
        TableStation station,
        @Nullable FitState state,
        Supply supply,
        @Nullable String note) {

    /** What a category rests on. */
    public enum CategoryFrom {
        /** The row says so. */
        COLUMN,
        /** Proposed by a word in the name of the part. */
        NAME,
        /** Nothing says: structure is taken. */
        NOTHING
    }

    /** Quantity times unit mass; 0 where the mass is not known. */
    public Mass lineMass() {
        return unitMass == null ? Mass.ZERO : unitMass.times(quantity);
    }
}
