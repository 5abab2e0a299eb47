package dev.ledgerwing.core.power.network;

/** How full the packs are, all of them alike. */
public enum Charge {
    FULL("full"),
    NOMINAL("nominal"),
    EMPTY("empty");

    private final String word;

    Charge(String word) {
        this.word = word;
    }

    /** The word people read. */
    public String word() {
        return word;
    }
}
