package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.verdict.Verdict;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** One accepted change, and the figures it was judged by at the time. Written once. */
@Entity
@Immutable
@Table(name = "revision")
class RevisionRow {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "revision_seq")
    @SequenceGenerator(name = "revision_seq", sequenceName = "revision_seq")
    @Nullable
    Long id;

    long airframeId;
    int number;
    String author;
    Instant moment;
    String title;
    String reason;

    @Enumerated(EnumType.STRING)
    Nature nature;

    @Nullable
    Long targetMg;

    long basicMg;
    long predictedMg;

    @Enumerated(EnumType.STRING)
    Verdict massVerdict;

    /** The flat map of figures as a JSON object. */
    String figures;

    int reviewVersion;

    @SuppressWarnings("NullAway.Init")
    protected RevisionRow() {}
}
