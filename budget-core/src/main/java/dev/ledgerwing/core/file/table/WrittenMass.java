package dev.ledgerwing.core.file.table;

import java.math.BigDecimal;

/** A mass as written, exactly, and what the rounding of its last digit may have taken away; both in grams. */
record WrittenMass(BigDecimal grams, BigDecimal halfDigitG) {

    WrittenMass times(int pieces) {
        BigDecimal factor = BigDecimal.valueOf(pieces);
        return new WrittenMass(grams.multiply(factor), halfDigitG.multiply(factor));
    }

    WrittenMass plus(WrittenMass other) {
        return new WrittenMass(grams.add(other.grams), halfDigitG.add(other.halfDigitG));
    }

    /** Whether the two are the same within the digits written. */
    boolean agreesWith(WrittenMass other) {
        BigDecimal apart = grams.subtract(other.grams).abs();
        return apart.compareTo(halfDigitG.add(other.halfDigitG)) <= 0;
    }
}
