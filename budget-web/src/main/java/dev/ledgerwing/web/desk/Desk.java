package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.BuildMerge;
import dev.ledgerwing.core.build.Conflict;
import dev.ledgerwing.core.build.InvalidBuild;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.review.ReviewDelta;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The desk: the one way in for every change. In one transaction it locks the airframe, merges the change into the newest
 * record, reviews the result and appends it as a revision. Nothing is ever overwritten.
 */
@Service
public class Desk {

    private final AirframeRows airframes;
    private final Ledger ledger;
    private final Archive archive;
    private final Clock clock;
    private final TransactionTemplate writing;

    Desk(
            AirframeRows airframes,
            Ledger ledger,
            Archive archive,
            Clock clock,
            PlatformTransactionManager transactionManager) {
        this.airframes = airframes;
        this.ledger = ledger;
        this.archive = archive;
        this.clock = clock;
        this.writing = new TransactionTemplate(transactionManager);
    }

    /**
     * Opens a new airframe with its first revision.
     *
     * @throws AirframeCodeTaken when there is one with this code
     */
    public Snapshot open(Build build, Signature signature, Instant moment) {
        String code = build.airframe().code();
        try {
            return inTransaction(() -> {
                if (airframes.existsByCode(code)) {
                    throw new AirframeCodeTaken(code);
                }
                AirframeRow airframe = new AirframeRow(code);
                // what a first revision is told against: the same airframe with nothing in it
                Build nothing = Build.blank(build.airframe(), build.budget(), build.judgedBy());
                BuildChange change = BuildChange.between("New airframe", Nature.FITTED, nothing, build);
                return append(airframe, nothing, Judged.of(build), entry(change, signature, moment));
            });
        } catch (DataIntegrityViolationException refused) {
            if (airframes.existsByCode(code)) {
                throw new AirframeCodeTaken(code);
            }
            throw refused;
        }
    }

    public Snapshot open(Build build, Signature signature) {
        return open(build, signature, clock.instant());
    }

    /**
     * Does what a member wants done, merged with whatever has landed since the revision the member saw.
     *
     * @throws AirframeNotFound when there is no such airframe or revision
     * @throws StillWriting when another change holds the only place to write
     */
    public Outcome change(Seen seen, Deed deed, Signature signature) {
        return change(seen, deed, signature, clock.instant());
    }

    /** As {@link #change(Seen, Deed, Signature)} for something done at an earlier moment. */
    public Outcome change(Seen seen, Deed deed, Signature signature, Instant moment) {
        return inTransaction(() -> {
            AirframeRow airframe = ledger.lock(seen.airframe()).orElseThrow(() -> noSuchAirframe(seen.airframe()));
            Snapshot base = archive.number(airframe, seen.number()).orElseThrow(() -> noSuchRevision(seen));
            Snapshot head = archive.head(airframe);
            Build wanted;
            try {
                wanted = deed.wanted().from(base.build());
            } catch (IllegalArgumentException refused) {
                return new Outcome.Refused(head, sentences(refused));
            }
            return merge(airframe, new Stand(base, head), wanted, deed, signature, moment);
        });
    }

    /** Takes one revision back, as a new one, under the same rules as any change. */
    public Outcome undo(Seen undone, Signature signature) {
        Deed deed = inTransaction(() -> undoing(undone));
        return change(undone, deed, signature);
    }

    private Deed undoing(Seen undone) {
        AirframeRow airframe =
                airframes.findByCode(undone.airframe()).orElseThrow(() -> noSuchAirframe(undone.airframe()));
        Snapshot before = archive.number(airframe, undone.number() - 1)
                .orElseThrow(() -> new AirframeNotFound("There is nothing before revision " + undone.number() + "."));
        Snapshot after = archive.number(airframe, undone.number()).orElseThrow(() -> noSuchRevision(undone));
        String title = "Revision " + undone.number() + " taken back: "
                + after.revision().title();
        boolean booked =
                !Objects.equals(before.build().bookings(), after.build().bookings());
        return new Deed(title, after.revision().nature(), seen -> before.build(), booked);
    }

    private record Stand(Snapshot base, Snapshot head) {

        boolean isStale() {
            return base.revision().number() != head.revision().number();
        }
    }

    private Outcome merge(
            AirframeRow airframe, Stand stand, Build wanted, Deed deed, Signature signature, Instant moment) {
        Snapshot head = stand.head();
        if (deed.computed() && stand.isStale()) {
            return new Outcome.Clash(
                    head,
                    List.of(new Conflict(
                            "the record", "", "has changed since this was worked out; work it out again")));
        }
        BuildMerge.Result result = BuildMerge.merge(stand.base().build(), head.build(), wanted);
        if (result.build().isEmpty()) {
            return new Outcome.Clash(head, result.conflicts());
        }
        Build merged = result.build().get();
        BuildChange change = BuildChange.between(deed.title(), deed.nature(), head.build(), merged);
        if (change.isEmpty()) {
            return new Outcome.NothingChanged(head);
        }
        if (!merged.airframe().code().equals(head.build().airframe().code())) {
            return new Outcome.Refused(head, List.of("the code of an airframe stays as it is"));
        }
        Snapshot landed;
        try {
            landed = append(airframe, head.build(), Judged.of(merged), entry(change, signature, moment));
        } catch (RecordTooLarge refused) {
            return new Outcome.Refused(head, List.of(refused.sentence()));
        }
        return new Outcome.Landed(
                landed,
                ReviewDelta.between(head.review(), landed.review()),
                head.revision().number());
    }

    private Snapshot append(AirframeRow airframe, Build before, Judged after, Ledger.Entry entry) {
        Ledger.Stored stored = ledger.append(airframe, before, after, entry);
        return new Snapshot(Revision.of(stored.revision()), after.build(), after.review(), stored.fingerprint());
    }

    private static Ledger.Entry entry(BuildChange change, Signature signature, Instant moment) {
        return new Ledger.Entry(change, signature.author(), signature.reason(), moment);
    }

    private static List<String> sentences(IllegalArgumentException refused) {
        return refused instanceof InvalidBuild invalid
                ? invalid.problems().stream().map(Problem::sentence).toList()
                : List.of(String.valueOf(refused.getMessage()));
    }

    private static AirframeNotFound noSuchAirframe(String code) {
        return new AirframeNotFound("There is no airframe “" + code + "”.");
    }

    private static AirframeNotFound noSuchRevision(Seen seen) {
        return new AirframeNotFound("“" + seen.airframe() + "” has no revision " + seen.number() + ".");
    }

    private <T> T inTransaction(Supplier<T> work) {
        T done = writing.execute(status -> work.get());
        return Objects.requireNonNull(done);
    }
}
