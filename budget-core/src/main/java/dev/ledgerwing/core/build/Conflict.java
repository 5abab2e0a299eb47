package dev.ledgerwing.core.build;

/**
 * Why a change could not be merged.
 *
 * @param subject what both sides changed, by its name
 * @param field the field of the record, empty when it is about the whole
 */
public record Conflict(String subject, String field, String sentence) {}
