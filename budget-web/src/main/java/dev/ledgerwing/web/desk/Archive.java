package dev.ledgerwing.web.desk;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.core.file.ChangeJson;
import jakarta.persistence.EntityManager;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Reads revisions. Records and reviews are kept by revision id: they never change, so any number of processes may keep them. */
@Component
class Archive {

    private static final long MOST_LINES_KEPT = 100_000;

    private final EntityManager entityManager;
    private final RevisionRows revisions;
    private final Cache<Long, Kept> kept = Caffeine.newBuilder()
            .maximumWeight(MOST_LINES_KEPT)
            .weigher((Long id, Kept each) -> 20 + each.judged().build().lines().size())
            .build();

    Archive(EntityManager entityManager, RevisionRows revisions) {
        this.entityManager = entityManager;
        this.revisions = revisions;
    }

    private record Kept(Judged judged, String fingerprint) {}

    Snapshot head(AirframeRow airframe) {
        return number(airframe, airframe.headNumber)
                .orElseThrow(() -> new IllegalStateException("the head revision of " + airframe.code + " is missing"));
    }

    Optional<Snapshot> number(AirframeRow airframe, int number) {
        return revisions
                .findByAirframeIdAndNumber(Objects.requireNonNull(airframe.id), number)
                .map(this::snapshot);
    }

    Snapshot snapshot(RevisionRow row) {
        Kept found = kept.get(Objects.requireNonNull(row.id), this::load);
        return new Snapshot(
                Revision.of(row), found.judged().build(), found.judged().review(), found.fingerprint());
    }

    private Kept load(Long revisionId) {
        RevisionBodyRow body = body(revisionId);
        Build build = BuildFile.readOwn(Packed.unpack(body.document));
        return new Kept(Judged.of(build), body.sha256);
    }

    /** The bytes of the build file exactly as they were written. */
    byte[] document(RevisionRow row) {
        return Packed.unpack(body(Objects.requireNonNull(row.id)).document);
    }

    BuildChange change(RevisionRow row) {
        return ChangeJson.read(Packed.unpack(body(Objects.requireNonNull(row.id)).changeDocument));
    }

    private RevisionBodyRow body(Long revisionId) {
        return Objects.requireNonNull(entityManager.find(RevisionBodyRow.class, revisionId), "a revision has no body");
    }
}
