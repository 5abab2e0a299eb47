package dev.ledgerwing.core.mass;

/** What a margin is a per cent of: documents differ, so it is always said. */
public enum MarginOf {
    BASIC("of basic mass"),
    PREDICTED("of predicted mass"),
    TARGET("of target");

    private final String words;

    MarginOf(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
