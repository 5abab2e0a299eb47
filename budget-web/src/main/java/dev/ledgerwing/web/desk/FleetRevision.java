package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A revision together with the airframe it belongs to.
 *
 * @param change what it did to the predicted mass; null for a first revision
 */
public record FleetRevision(
        String airframeCode,
        String airframeName,
        Revision revision,
        @Nullable Mass change) {

    static FleetRevision of(Object[] found) {
        Revision revision = Revision.of((RevisionRow) found[0]);
        Mass change = found[3] == null ? null : revision.predicted().minus(new Mass((Long) found[3]));
        return new FleetRevision((String) found[1], (String) found[2], revision, change);
    }
}
