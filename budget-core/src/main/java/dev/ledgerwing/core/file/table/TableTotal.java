package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A row that states the sum of other rows; it is checked and never a part.
 *
 * @param row counted from 1
 * @param label how the row calls itself
 * @param stated the sum it states; null = it states none that can be read
 * @param ownSum sum of the rows it is held against, as they are imported
 * @param agrees whether the two are the same within the digits written
 * @param complete whether the mass of every row it covers is known
 * @param sentence what was compared and how it came out
 */
public record TableTotal(
        int row, String label, @Nullable Mass stated, Mass ownSum, boolean agrees, boolean complete, String sentence) {}
