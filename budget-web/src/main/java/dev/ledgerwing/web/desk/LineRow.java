package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** One part line of the newest revision, for questions across airframes: a cache that can be rebuilt. */
@Entity
@Table(name = "line_row")
class LineRow {

    /** Raise it when what a row holds changes: all rows are then rebuilt at the next start. */
    static final int VERSION = 1;

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "line_row_seq")
    @SequenceGenerator(name = "line_row_seq", sequenceName = "line_row_seq")
    @Nullable
    Long id;

    @Column(updatable = false)
    long airframeId;

    @Column(updatable = false)
    String lineId;

    String name;
    String nameFolded;

    @Nullable
    String partCode;

    String assembly;

    @Enumerated(EnumType.STRING)
    Category category;

    int quantity;

    @Nullable
    Long unitMassMg;

    @Enumerated(EnumType.STRING)
    Basis basis;

    @SuppressWarnings("NullAway.Init")
    protected LineRow() {}

    @SuppressWarnings("NullAway.Init")
    LineRow(long airframeId, PartLine line) {
        this.airframeId = airframeId;
        this.lineId = line.id();
        show(line);
    }

    /** Takes over what the line says now. */
    final void show(PartLine line) {
        Mass unitMass = line.mass().unitMass();
        name = line.name();
        nameFolded = shortened(line.name().toLowerCase(Locale.ROOT));
        partCode = line.supply().partCode();
        assembly = line.assembly();
        category = line.category();
        quantity = line.quantity();
        unitMassMg = unitMass == null ? null : unitMass.mg();
        basis = line.mass().basis();
    }

    /** Folding can lengthen a text by a few letters; nobody reads what is cut off here. */
    private static String shortened(String text) {
        int end = Math.min(200, text.length());
        return text.substring(0, end > 0 && Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end);
    }
}
