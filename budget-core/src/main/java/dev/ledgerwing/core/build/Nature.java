package dev.ledgerwing.core.build;

/**
 * What a change of mass means: the ledger was wrong about what is aboard, or something else is aboard now. Only the second
 * changes what the airframe weighs.
 */
public enum Nature {
    /** The ledger is put right; what is aboard stays as it is. */
    CORRECTED("corrects the ledger"),
    /** Something was fitted, removed, swapped or planned. */
    FITTED("changes what is aboard");

    private final String words;

    Nature(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
