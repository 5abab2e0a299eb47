package dev.ledgerwing.web.team;

import dev.ledgerwing.core.quantity.UnitSystem;
import java.time.Clock;
import java.util.Optional;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionOperations;

/** The members of the team. */
@Service
public class Members {

    private final MemberRows rows;
    private final PasswordEncoder passphrases;
    private final TransactionOperations transaction;
    private final Clock clock;

    /** Once there is an account there always is one: the last one cannot be removed. */
    private volatile boolean anyone;

    Members(MemberRows rows, PasswordEncoder passphrases, TransactionOperations transaction, Clock clock) {
        this.rows = rows;
        this.passphrases = passphrases;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** Whether the first account exists. */
    public boolean anyone() {
        if (!anyone) {
            anyone = rows.count() > 0;
        }
        return anyone;
    }

    public Optional<Member> byId(long id) {
        return rows.findById(id).map(MemberRow::view);
    }

    /** Creates the first account of the team; nothing if somebody else was faster. */
    public Optional<Member> addFirst(NewMember newcomer) {
        // Hashing takes its time by design, so it is done before the transaction, which others may be waiting for.
        String hash = passphrases.encode(newcomer.passphrase());
        try {
            return transaction.execute(
                    status -> rows.count() > 0 ? Optional.empty() : Optional.of(storeFounder(newcomer, hash)));
        } catch (DataIntegrityViolationException clash) {
            if (anyone()) {
                return Optional.empty();
            }
            throw clash;
        }
    }

    private Member storeFounder(NewMember newcomer, String hash) {
        return rows.save(MemberRow.founder(newcomer.name(), hash, clock.instant()))
                .view();
    }

    /** Sets the units in which a member reads masses and lengths. */
    public void chooseUnits(long id, UnitSystem units) {
        transaction.executeWithoutResult(status -> rows.findById(id).ifPresent(row -> row.read(units)));
    }
}
