package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The mass of a row.
 *
 * @param unitMass of one piece, to the milligram; null = not known
 * @param written of all its pieces, exactly as written; null = not known
 */
record PieceMass(@Nullable Mass unitMass, @Nullable WrittenMass written) {

    static final PieceMass NOT_KNOWN = new PieceMass(null, null);
}
