package dev.ledgerwing.web.radio;

import dev.ledgerwing.web.forms.Typed;

/**
 * The reason that was typed for a concession, and what is wrong with it.
 *
 * @param key which of the concessions; empty = none
 * @param trouble empty where nothing is wrong
 */
record WhyTyped(String key, String text, String trouble) {

    static final WhyTyped NOTHING = new WhyTyped("", "", "");

    /** As long as the record's own names. */
    private static final int LONGEST = 200;

    static WhyTyped of(String key, Typed typed) {
        String text = typed.text("reason");
        if (text.isEmpty()) {
            return new WhyTyped(key, text, "Please say why, for those who ask later.");
        }
        boolean tooLong = text.length() > LONGEST;
        boolean isPlain = text.chars().noneMatch(Character::isISOControl);
        return new WhyTyped(
                key,
                text,
                tooLong
                        ? "At most " + LONGEST + " characters, please: this has " + text.length() + "."
                        : isPlain ? "" : "Please use letters, digits and signs only.");
    }

    /** Whether it is this concession that it was typed for. */
    public boolean isFor(String other) {
        return key.equals(other);
    }

    boolean isFine() {
        return trouble.isEmpty();
    }
}
