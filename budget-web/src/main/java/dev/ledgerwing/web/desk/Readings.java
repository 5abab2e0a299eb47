package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Nature;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What pages read: the fleet, one airframe at one revision, its history. Never writes. */
@Service
@Transactional(readOnly = true)
public class Readings {

    private final AirframeRows airframes;
    private final RevisionRows revisions;
    private final Archive archive;

    Readings(AirframeRows airframes, RevisionRows revisions, Archive archive) {
        this.airframes = airframes;
        this.revisions = revisions;
        this.archive = archive;
    }

    /** The headlines of every airframe, in one query. */
    public List<AirframeHeadline> fleet() {
        return airframes.findAllByOrderByCode().stream()
                .map(AirframeHeadline::of)
                .toList();
    }

    /** The newest revision.
     *
     * @throws AirframeNotFound when there is none with this code */
    public Snapshot head(String code) {
        return archive.head(airframe(code));
    }

    /** One revision.
     *
     * @throws AirframeNotFound when there is no such airframe or revision */
    public Snapshot at(Seen seen) {
        return archive.snapshot(row(seen));
    }

    /** Every revision, newest first. */
    public List<Revision> history(String code) {
        return revisions.findByAirframeIdOrderByNumberDesc(Objects.requireNonNull(airframe(code).id)).stream()
                .map(Revision::of)
                .toList();
    }

    /** At most so many revisions from this one back, newest first. */
    public List<Revision> historyFrom(Seen newest, int most) {
        long airframe = Objects.requireNonNull(airframe(newest.airframe()).id);
        return revisions
                .findByAirframeIdAndNumberLessThanEqualOrderByNumberDesc(airframe, newest.number(), Limit.of(most))
                .stream()
                .map(Revision::of)
                .toList();
    }

    /** The newest revisions of all airframes, newest first. */
    public List<FleetRevision> lately(int most) {
        return revisions.newest(Limit.of(most)).stream().map(FleetRevision::of).toList();
    }

    /** What a revision changed. */
    public BuildChange change(Seen seen) {
        return archive.change(row(seen));
    }

    /** What leads from one revision to another. */
    public BuildChange difference(Seen from, int to) {
        Snapshot before = at(from);
        Snapshot after = at(new Seen(from.airframe(), to));
        return BuildChange.between("Difference", Nature.FITTED, before.build(), after.build());
    }

    /** The build file of a revision, byte for byte as its fingerprint was taken. */
    public byte[] document(Seen seen) {
        return archive.document(row(seen));
    }

    private AirframeRow airframe(String code) {
        return airframes
                .findByCode(code)
                .orElseThrow(() -> new AirframeNotFound("There is no airframe “" + code + "”."));
    }

    private RevisionRow row(Seen seen) {
        Optional<RevisionRow> row = revisions.findByAirframeIdAndNumber(
                Objects.requireNonNull(airframe(seen.airframe()).id), seen.number());
        return row.orElseThrow(
                () -> new AirframeNotFound("“" + seen.airframe() + "” has no revision " + seen.number() + "."));
    }
}
