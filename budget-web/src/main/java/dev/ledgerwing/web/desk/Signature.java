package dev.ledgerwing.web.desk;

/** Who makes a revision, and why (may be empty). */
public record Signature(String author, String reason) {

    private static final int LONGEST_REASON = 500;

    public Signature {
        if (reason.length() > LONGEST_REASON) {
            throw new IllegalArgumentException(
                    "reason must be at most " + LONGEST_REASON + " characters, was " + reason.length());
        }
    }
}
