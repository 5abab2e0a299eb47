package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.mass.RevisionMass;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One accepted change as history shows it.
 *
 * @param title what was done, reason why (may be empty)
 */
public record Revision(
        int number,
        String author,
        Instant moment,
        String title,
        String reason,
        Nature nature,
        @Nullable Mass target,
        Mass basic,
        Mass predicted,
        Verdict massVerdict) {

    static Revision of(RevisionRow row) {
        return new Revision(
                row.number,
                row.author,
                row.moment,
                row.title,
                row.reason,
                row.nature,
                row.targetMg == null ? null : new Mass(row.targetMg),
                new Mass(row.basicMg),
                new Mass(row.predictedMg),
                row.massVerdict);
    }

    public RevisionMass mass() {
        return new RevisionMass(number, moment, target, basic, predicted);
    }
}
