package dev.ledgerwing.web.support;

import org.springframework.http.HttpStatus;

/**
 * Something a person asked for that cannot be: the page that is not there, the edit that came too late. Its sentence is shown
 * to the person, so it says what is the matter in plain words and holds nothing secret.
 */
public class Refusal extends RuntimeException {

    private final HttpStatus status;
    private final String sentence;

    public Refusal(HttpStatus status, String sentence) {
        super(sentence);
        this.status = status;
        this.sentence = sentence;
    }

    /** A page or thing that is not there: "There is no airframe “heron”." */
    public static Refusal notFound(String sentence) {
        return new Refusal(HttpStatus.NOT_FOUND, sentence);
    }

    HttpStatus status() {
        return status;
    }

    /** What the person reads. */
    public String sentence() {
        return sentence;
    }
}
