package dev.ledgerwing.core.balance;

/** Which mass a balance is of; both must lie in the band. */
public enum MassState {
    /** What the ledger says now. */
    BASIC("basic"),
    /** With the growth allowance of every line at its station, and with what is booked. */
    PREDICTED("predicted");

    private final String word;

    MassState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
