package dev.ledgerwing.core.build;

/** How a line of several pieces was weighed: every piece by itself, one piece times the quantity, or all together. */
public enum WeighedAs {
    EACH("each by itself"),
    ONE("one of them"),
    TOGETHER("all together");

    private final String words;

    WeighedAs(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
