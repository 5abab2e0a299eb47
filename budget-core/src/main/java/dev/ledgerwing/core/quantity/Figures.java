package dev.ledgerwing.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes figures for people, the same on the web, on paper and on the command line: a thin space before the unit, a real minus
 * sign, grams below 10 kg and kilograms from there on. Never depends on the machine's language.
 */
public record Figures(UnitSystem units) {

    public static final Figures METRIC = new Figures(UnitSystem.GRAM_MILLIMETRE);

    private static final char THIN_SPACE = '\u2009';
    private static final char MINUS = '\u2212';
    private static final double KILOGRAMS_FROM_G = 10_000;

    /** {@code 6912 g}, {@code 0.35 g}, {@code 12.480 kg} or {@code 3.5 oz}. */
    public String mass(Mass mass) {
        return massNumber(mass) + THIN_SPACE + massUnit(mass);
    }

    /** As {@link #mass} with its sign always shown. */
    public String signedMass(Mass mass) {
        return (mass.mg() > 0 ? "+" : "") + mass(mass);
    }

    /** As {@link #mass}, for what is only estimated: no tenths of a gram from 10 g on. */
    public String roughMass(Mass mass) {
        return Math.abs(mass.grams()) < 10 ? mass(mass) : mass(Mass.ofGrams(Math.rint(mass.grams())));
    }

    /** The number of {@link #mass} without its unit. */
    public String massNumber(Mass mass) {
        return isInKilograms(mass) ? fixed(mass.grams() / MassUnit.KG.inGrams(), 3) : smallMass(mass);
    }

    /** Always in the small unit, for columns headed with it: {@code 12480.5}. The smaller, the more places. */
    public String smallMass(Mass mass) {
        double value = units == UnitSystem.OUNCE_INCH ? mass.grams() / MassUnit.OZ.inGrams() : mass.grams();
        if (Math.abs(value) < 0.1) {
            return number(value, 3);
        }
        boolean toTheTenth = units == UnitSystem.GRAM_MILLIMETRE && Math.abs(value) >= 10;
        return number(value, toTheTenth ? 1 : 2);
    }

    /** As {@link #smallMass} to a thousandth, for fields that are edited: in grams this is exact. */
    public String exactMass(Mass mass) {
        return number(mass.grams() / units.massUnit().inGrams(), 3);
    }

    /** As {@link #lengthNumber} to a thousandth, for fields that are edited: in millimetres this is exact. */
    public String exactLength(Length length) {
        return number(length.mm() / units.lengthUnit().inMm(), 3);
    }

    /** The unit of {@link #smallMass}: {@code g} or {@code oz}. */
    public String smallMassUnit() {
        return units == UnitSystem.OUNCE_INCH ? "oz" : "g";
    }

    private String massUnit(Mass mass) {
        return isInKilograms(mass) ? "kg" : smallMassUnit();
    }

    private boolean isInKilograms(Mass mass) {
        return units == UnitSystem.GRAM_MILLIMETRE && Math.abs(mass.grams()) >= KILOGRAMS_FROM_G;
    }

    /** {@code 210 mm} or {@code 8.27 in}. */
    public String length(Length length) {
        return lengthNumber(length) + THIN_SPACE + lengthUnit();
    }

    public String lengthNumber(Length length) {
        return units == UnitSystem.OUNCE_INCH ? number(length.mm() / LengthUnit.IN.inMm(), 2) : number(length.mm(), 1);
    }

    /** The unit of {@link #lengthNumber}: {@code mm} or {@code in}. */
    public String lengthUnit() {
        return units == UnitSystem.OUNCE_INCH ? "in" : "mm";
    }

    /** {@code 4.2 %}. */
    public static String percent(double percent) {
        return number(percent, 1) + THIN_SPACE + "%";
    }

    /** At most {@code decimals} places, closing zeros dropped, with a real minus sign. */
    public static String number(double value, int decimals) {
        BigDecimal rounded =
                new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString().replace('-', MINUS);
    }

    /** Exactly {@code decimals} places. */
    public static String fixed(double value, int decimals) {
        return new BigDecimal(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString()
                .replace('-', MINUS);
    }
}
