package dev.ledgerwing.web.team;

import dev.ledgerwing.core.quantity.UnitSystem;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.text.Normalizer;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "member")
@SuppressWarnings("NullAway.Init")
class MemberRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    @Nullable
    private Long id;

    private String name;

    @Column(name = "name_folded")
    private String nameFolded;

    @Column(name = "passphrase_hash")
    private String passphraseHash;

    @Enumerated(EnumType.STRING)
    private UnitSystem units;

    /** True for the account of the first visit, nothing for any other; the column's unique key lets only one win that race. */
    @Nullable
    @SuppressWarnings("UnusedVariable")
    private Boolean founder;

    @Column(name = "joined_at")
    private Instant joinedAt;

    protected MemberRow() {}

    private MemberRow(String name, String passphraseHash, Instant joinedAt) {
        this.name = name;
        this.nameFolded = folded(name);
        this.passphraseHash = passphraseHash;
        this.units = UnitSystem.GRAM_MILLIMETRE;
        this.joinedAt = joinedAt;
    }

    static MemberRow founder(String name, String passphraseHash, Instant joinedAt) {
        MemberRow row = new MemberRow(name, passphraseHash, joinedAt);
        row.founder = true;
        return row;
    }

    /** Names that look the same but for upper and lower case are the same name. */
    static String folded(String name) {
        String composed = Normalizer.normalize(name.strip(), Normalizer.Form.NFC);
        return composed.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    void read(UnitSystem chosen) {
        units = chosen;
    }

    Member view() {
        return new Member(id(), name, units);
    }

    SignedIn signedIn() {
        return new SignedIn(id(), name, passphraseHash);
    }

    private long id() {
        return Objects.requireNonNull(id, "a member has its id once stored");
    }
}
