package dev.ledgerwing.core.balance.correction;

/** The kinds of correction, the least work first. */
public enum CorrectionKind {
    TAKE_OUT_BALLAST("take out ballast"),
    MOVE("move a part"),
    BALLAST("ballast"),
    PAIR("two together"),
    SHIFT_WING("shift the wing"),
    LENGTHEN_NOSE("lengthen the nose"),
    LEAVE_OUT("leave at home"),
    OTHER_MASS("another part");

    private final String words;

    CorrectionKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
