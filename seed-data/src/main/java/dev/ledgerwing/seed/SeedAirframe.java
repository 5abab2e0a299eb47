package dev.ledgerwing.seed;

import java.util.List;

/**
 * One airframe of the demo team.
 *
 * @param code lower-case slug, also the name of its folder
 * @param revisions by number, the first one first
 */
public record SeedAirframe(String code, List<SeedRevision> revisions) {

    public SeedAirframe {
        revisions = List.copyOf(revisions);
    }

    /** The airframe as it is now. */
    public SeedRevision last() {
        return revisions.get(revisions.size() - 1);
    }
}
