package dev.ledgerwing.web.desk;

/** The revision a member was looking at when deciding. */
public record Seen(String airframe, int number) {}
