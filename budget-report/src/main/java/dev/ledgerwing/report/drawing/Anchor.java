package dev.ledgerwing.report.drawing;

/** Which part of a text stands at its place. */
enum Anchor {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    private final String word;
    private final double share;

    Anchor(String word, double share) {
        this.word = word;
        this.share = share;
    }

    String word() {
        return word;
    }

    /** How much of the text stands to the left of its place: 0 to 1. */
    double share() {
        return share;
    }
}
