package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * A revision together with the airframe it belongs to.
 *
 * @param change what it did to the predicted mass; null for a first revision, and where either side is not known
 */
public record FleetRevision(
        String airframeCode,
        String airframeName,
        Revision revision,
        @Nullable Mass change) {

    static FleetRevision of(Object[] found) {
        Revision revision = Revision.of((RevisionRow) found[0]);
        boolean isKnown = revision.massVerdict() != Verdict.UNKNOWN && found[4] != Verdict.UNKNOWN;
        Mass change = found[3] == null || !isKnown ? null : revision.predicted().minus(new Mass((Long) found[3]));
        return new FleetRevision((String) found[1], (String) found[2], revision, change);
    }
}
