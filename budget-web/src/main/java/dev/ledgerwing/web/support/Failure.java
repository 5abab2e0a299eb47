package dev.ledgerwing.web.support;

import java.util.Arrays;

/** What people read when something went wrong, unless a {@link Refusal} says it better. */
enum Failure {
    NOT_UNDERSTOOD(400, "Not understood", "The server could not make sense of this request, so nothing was changed."),
    NOT_ALLOWED(
            403,
            "Not allowed",
            "This was refused, so nothing was changed. If the page had been open for long, load it again and retry."),
    NOT_FOUND(
            404, "Not found", "There is nothing at this address. It may have been removed, or the address has a slip."),
    CLASH(
            409,
            "Somebody was faster",
            "Somebody else changed the same thing at the same moment, so nothing of yours was stored."
                    + " Load the page again, look at what is there now, and retry."),
    TOO_LARGE(
            413,
            "Too large",
            "That was more than the server takes at once: a file may have 8 MB, a whole form 10 MB. Nothing was changed."),
    BUSY(
            503,
            "Still writing",
            "Another change is still being written, so yours was not stored. Try again in a moment."),
    FAULT(
            500,
            "This went wrong",
            "The server failed at this. What was stored before is safe; whether the last change was made, the history tells."
                    + " The server's log holds the reason.");

    private final int status;
    private final String heading;
    private final String sentence;

    Failure(int status, String heading, String sentence) {
        this.status = status;
        this.heading = heading;
        this.sentence = sentence;
    }

    static Failure of(int status) {
        return Arrays.stream(values())
                .filter(failure -> failure.status == status)
                .findFirst()
                .orElse(status < 500 ? NOT_UNDERSTOOD : FAULT);
    }

    String heading() {
        return heading;
    }

    String sentence() {
        return sentence;
    }
}
