package dev.ledgerwing.report.sheet;

/**
 * One ruled cell of a summary.
 *
 * @param note what goes with the value, in small print; empty = nothing
 */
public record Fact(String label, String value, String note) {}
