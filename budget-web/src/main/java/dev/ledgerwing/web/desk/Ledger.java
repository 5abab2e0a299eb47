package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.core.file.ChangeJson;
import dev.ledgerwing.core.review.BuildReview;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/**
 * Appends revisions and keeps the caches beside them. Only {@code persist}, never {@code save}: a revision is never written
 * over. Everything here runs inside the desk's transaction.
 */
@Component
class Ledger {

    /** What the caches of an airframe are made by; a start with another number rebuilds them. */
    static final int CACHE_VERSION = BuildReview.VERSION * 1000 + LineRow.VERSION;

    private static final int LARGEST_PACKED_BYTES = 1_000_000;
    private static final JsonMapper JSON = new JsonMapper();

    private final EntityManager entityManager;
    private final AirframeRows airframes;
    private final LineCache lines;

    Ledger(EntityManager entityManager, AirframeRows airframes, LineCache lines) {
        this.entityManager = entityManager;
        this.airframes = airframes;
        this.lines = lines;
    }

    /** The row of an airframe, locked until the transaction ends. */
    Optional<AirframeRow> lock(String code) {
        Optional<AirframeRow> row = airframes.findByCode(code);
        row.ifPresent(found -> entityManager.refresh(found, LockModeType.PESSIMISTIC_WRITE));
        return row;
    }

    /**
     * Appends the record after {@code change} as the next revision and brings the caches up to it.
     *
     * @throws RecordTooLarge before anything is written
     */
    Stored append(AirframeRow airframe, Build before, Judged after, Entry entry) {
        byte[] document = BuildFile.write(after.build());
        if (document.length > BuildFile.LARGEST_BYTES) {
            throw new RecordTooLarge();
        }
        byte[] packedDocument = packed(document);
        byte[] packedChange = packed(ChangeJson.write(entry.change()));
        RevisionRow revision = revision(airframe, after, entry);
        if (airframe.id == null) {
            showHead(airframe, after, revision, 0);
            entityManager.persist(airframe);
        }
        revision.airframeId = Objects.requireNonNull(airframe.id);
        entityManager.persist(revision);
        long revisionId = Objects.requireNonNull(revision.id);
        String fingerprint = Packed.sha256(document);
        entityManager.persist(
                new RevisionBodyRow(revisionId, BuildFile.FORMAT, fingerprint, packedDocument, packedChange));
        showHead(airframe, after, revision, revisionId);
        lines.follow(airframe.id, before, after.build());
        return new Stored(revision, fingerprint);
    }

    private static byte[] packed(byte[] plain) {
        byte[] packed = Packed.pack(plain);
        if (packed.length > LARGEST_PACKED_BYTES) {
            throw new RecordTooLarge();
        }
        return packed;
    }

    private static RevisionRow revision(AirframeRow airframe, Judged after, Entry entry) {
        RevisionRow row = new RevisionRow();
        row.number = airframe.headNumber + 1;
        row.author = entry.author();
        row.moment = entry.moment();
        row.title = entry.change().title();
        row.reason = entry.reason();
        row.nature = entry.change().nature();
        row.targetMg = after.targetMg();
        row.basicMg = after.basicMg();
        row.predictedMg = after.predictedMg();
        row.massVerdict = after.massVerdict();
        row.figures = JSON.writeValueAsString(after.review().figures());
        row.reviewVersion = BuildReview.VERSION;
        return row;
    }

    private static void showHead(AirframeRow airframe, Judged after, RevisionRow revision, long revisionId) {
        airframe.headRevisionId = revisionId;
        airframe.headNumber = revision.number;
        airframe.headAuthor = revision.author;
        airframe.headMoment = revision.moment;
        airframe.headTitle = revision.title;
        showHeadlines(airframe, after);
    }

    private static void showHeadlines(AirframeRow airframe, Judged judged) {
        airframe.name = judged.build().airframe().name();
        airframe.stage = judged.build().airframe().stage();
        airframe.targetMg = judged.targetMg();
        airframe.basicMg = judged.basicMg();
        airframe.predictedMg = judged.predictedMg();
        airframe.massVerdict = judged.massVerdict();
        showBalance(airframe, judged);
        airframe.powerVerdict = judged.powerVerdict();
        airframe.powerMarginPercent = judged.power().marginPercent();
        airframe.powerEnduranceMinutes = judged.power().enduranceMinutes();
        showRadioAndOutputs(airframe, judged);
        airframe.lineCount = judged.build().lines().size();
        airframe.cacheVersion = CACHE_VERSION;
    }

    private static void showBalance(AirframeRow airframe, Judged judged) {
        CgFigure balance = judged.balance();
        airframe.balanceVerdict = judged.balanceVerdict();
        airframe.cgXMm = balance.xMm();
        airframe.cgPercentMac = balance.percent();
        airframe.forwardLimitXMm = balance.forwardMm();
        airframe.aftLimitXMm = balance.aftMm();
        airframe.forwardLimitPercentMac = balance.forwardPercent();
        airframe.aftLimitPercentMac = balance.aftPercent();
    }

    private static void showRadioAndOutputs(AirframeRow airframe, Judged judged) {
        RadioFigure radio = judged.radio();
        airframe.radioVerdict = judged.radioVerdict();
        airframe.radioChannelsNeeded = radio.channelsNeeded();
        airframe.radioChannelsAvailable = radio.channelsAvailable();
        airframe.radioSharedPairs = radio.sharedPairs();
        airframe.outputsVerdict = judged.outputsVerdict();
        airframe.outputsNeeded = judged.outputs().needed();
        airframe.outputsAvailable = judged.outputs().available();
    }

    /** Makes headlines and line rows anew from the newest record. */
    void rebuildCaches(AirframeRow airframe, Judged head) {
        showHeadlines(airframe, head);
        lines.rebuild(Objects.requireNonNull(airframe.id), head.build());
    }

    /** What a revision says about itself, beside the record. */
    record Entry(BuildChange change, String author, String reason, Instant moment) {}

    record Stored(RevisionRow revision, String fingerprint) {}
}
