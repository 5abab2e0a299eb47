package dev.ledgerwing.core.file.table;

import org.jspecify.annotations.Nullable;

/**
 * A column as it was understood.
 *
 * @param number counted from 1
 * @param header its heading as written
 * @param unit symbol of the unit that numbers without one count in; null = none given
 * @param why what led to this meaning, in words
 */
public record TableColumn(
        int number,
        String header,
        Meaning meaning,
        @Nullable String unit,
        String why) {}
