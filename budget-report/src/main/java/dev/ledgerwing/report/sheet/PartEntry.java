package dev.ledgerwing.report.sheet;

/**
 * One line of a group of parts.
 *
 * @param known whether its mass is known
 * @param detail part code, empty = none
 * @param note what the record notes about it, empty = nothing
 * @param x station aft of the datum
 */
public record PartEntry(
        boolean known,
        String name,
        String detail,
        String note,
        String quantity,
        String each,
        String total,
        String basis,
        String x) {}
