package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Conflict;
import dev.ledgerwing.core.review.ReviewDelta;
import java.util.List;

/** What became of a deed. */
public sealed interface Outcome {

    /** The newest revision now. */
    Snapshot head();

    /**
     * It is revision {@code head.revision().number()} now.
     *
     * @param delta what it did to the budgets, against the revision it landed on
     * @param landedOn the revision it landed on
     */
    record Landed(Snapshot head, ReviewDelta delta, int landedOn) implements Outcome {}

    /** The record was like that already; nothing was written. */
    record NothingChanged(Snapshot head) implements Outcome {}

    /** Somebody changed the same thing in the meantime; nothing was written. */
    record Clash(Snapshot head, List<Conflict> conflicts) implements Outcome {}

    /** The record would not fit together; nothing was written. */
    record Refused(Snapshot head, List<String> sentences) implements Outcome {}
}
