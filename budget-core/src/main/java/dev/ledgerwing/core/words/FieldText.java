package dev.ledgerwing.core.words;

/** One field that differs, in words. */
public record FieldText(String word, String before, String after) {}
