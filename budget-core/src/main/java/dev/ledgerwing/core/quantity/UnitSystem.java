package dev.ledgerwing.core.quantity;

/** The units a member reads: grams and millimetres, or ounces and inches. */
public enum UnitSystem {
    GRAM_MILLIMETRE,
    OUNCE_INCH
}
