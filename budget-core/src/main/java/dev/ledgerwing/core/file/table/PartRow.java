package dev.ledgerwing.core.file.table;

import org.jspecify.annotations.Nullable;

/**
 * A part with its mass as it was written.
 *
 * @param written of all its pieces; null = not known
 */
record PartRow(TablePart part, @Nullable WrittenMass written) {}
