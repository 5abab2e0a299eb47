package dev.ledgerwing.report.site;

import org.jspecify.annotations.Nullable;

/**
 * Where one sheet of an airframe is.
 *
 * @param words which sheet it is
 * @param page its address
 * @param pdf address of the same as PDF; null = there is none
 */
public record SheetLinks(
        String words, String page, @Nullable String pdf) {}
