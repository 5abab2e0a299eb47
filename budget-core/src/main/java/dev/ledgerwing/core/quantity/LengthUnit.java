package dev.ledgerwing.core.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Units people write lengths in. Inch: 25.4 mm exactly (international yard and pound agreement, 1959). */
public enum LengthUnit {
    MM(1, Set.of("mm", "millimetre", "millimetres", "millimeter", "millimeters")),
    CM(10, Set.of("cm", "centimetre", "centimetres", "centimeter", "centimeters")),
    M(1000, Set.of("m", "metre", "metres", "meter", "meters")),
    IN(25.4, Set.of("in", "inch", "inches", "\"", "″")),
    FT(304.8, Set.of("ft", "foot", "feet", "'", "′"));

    private final double mm;
    private final Set<String> spellings;

    LengthUnit(double mm, Set<String> spellings) {
        this.mm = mm;
        this.spellings = spellings;
    }

    /** How many millimetres one of this unit is. */
    public double inMm() {
        return mm;
    }

    public String symbol() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The unit spelt {@code text} in any case, with or without a full stop. */
    public static Optional<LengthUnit> spelt(String text) {
        String plain = Spelling.plain(text);
        for (LengthUnit unit : values()) {
            if (unit.spellings.contains(plain)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
