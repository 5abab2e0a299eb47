package dev.ledgerwing.core.verdict;

import java.util.Collection;

/** How a checked quantity stands, from good to bad. Not known is worse than tight: nobody may fly on it. */
public enum Verdict {
    HOLDS("holds"),
    TIGHT("tight"),
    UNKNOWN("not known"),
    BREAKS("breaks");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word people read. */
    public String word() {
        return word;
    }

    public Verdict worseOf(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The worst of them; a budget in which nothing was checked is not known. */
    public static Verdict worst(Collection<Verdict> verdicts) {
        return verdicts.stream().reduce(Verdict::worseOf).orElse(UNKNOWN);
    }
}
