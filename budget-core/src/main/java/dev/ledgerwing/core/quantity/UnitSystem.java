package dev.ledgerwing.core.quantity;

/** The units a member reads and types without naming them: grams and millimetres, or ounces and inches. */
public enum UnitSystem {
    GRAM_MILLIMETRE(MassUnit.G, LengthUnit.MM),
    OUNCE_INCH(MassUnit.OZ, LengthUnit.IN);

    private final MassUnit massUnit;
    private final LengthUnit lengthUnit;

    UnitSystem(MassUnit massUnit, LengthUnit lengthUnit) {
        this.massUnit = massUnit;
        this.lengthUnit = lengthUnit;
    }

    public MassUnit massUnit() {
        return massUnit;
    }

    public LengthUnit lengthUnit() {
        return lengthUnit;
    }
}
