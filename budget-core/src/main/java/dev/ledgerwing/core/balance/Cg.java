package dev.ledgerwing.core.balance;

/** A centre of gravity in millimetres: aft of the datum, right of the centre line, above the datum. */
public record Cg(double xMm, double yMm, double zMm) {}
