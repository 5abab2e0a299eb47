package dev.ledgerwing.report.sheet;

/** A way from a page to another, for a browser's screen only. */
public record PageLink(String address, String words) {}
