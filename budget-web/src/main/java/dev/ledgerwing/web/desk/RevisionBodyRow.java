package dev.ledgerwing.web.desk;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

/** The whole record after a revision, and the change that led to it; both packed. Written once. */
@Entity
@Immutable
@Table(name = "revision_body")
class RevisionBodyRow {

    @Id
    Long revisionId;

    String format;

    /** Of the unpacked document, byte for byte as it was written. */
    String sha256;

    byte[] document;
    byte[] changeDocument;

    @SuppressWarnings("NullAway.Init")
    protected RevisionBodyRow() {}

    RevisionBodyRow(long revisionId, String format, String sha256, byte[] document, byte[] changeDocument) {
        this.revisionId = revisionId;
        this.format = format;
        this.sha256 = sha256;
        this.document = document;
        this.changeDocument = changeDocument;
    }
}
