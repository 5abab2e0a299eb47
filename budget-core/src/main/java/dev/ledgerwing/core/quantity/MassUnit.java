package dev.ledgerwing.core.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Units people write masses in. Pound: 0.45359237 kg exactly (international yard and pound agreement, 1959); ounce: a 16th of it. */
public enum MassUnit {
    MG(0.001, Set.of("mg", "milligram", "milligrams")),
    G(1, Set.of("g", "gr", "gram", "grams", "gramm", "grm")),
    KG(1000, Set.of("kg", "kgs", "kilogram", "kilograms", "kilo")),
    OZ(28.349523125, Set.of("oz", "ounce", "ounces")),
    LB(453.59237, Set.of("lb", "lbs", "pound", "pounds"));

    private final double grams;
    private final Set<String> spellings;

    MassUnit(double grams, Set<String> spellings) {
        this.grams = grams;
        this.spellings = spellings;
    }

    /** How many grams one of this unit is. */
    public double inGrams() {
        return grams;
    }

    public String symbol() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The unit spelt {@code text} in any case, with or without a full stop. */
    public static Optional<MassUnit> spelt(String text) {
        String plain = Spelling.plain(text);
        for (MassUnit unit : values()) {
            if (unit.spellings.contains(plain)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
