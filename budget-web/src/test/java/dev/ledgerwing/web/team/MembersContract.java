package dev.ledgerwing.web.team;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.ledgerwing.core.quantity.UnitSystem;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.transaction.support.TransactionOperations;

/** What the list of members promises, whichever database is below it. */
@SpringBootTest(properties = "ledgerwing.demo=false")
abstract class MembersContract {

    @Autowired
    MemberRows rows;

    @Autowired
    PasswordEncoder passphrases;

    @Autowired
    TransactionOperations transaction;

    @Autowired
    Clock clock;

    @Autowired
    JdbcTemplate jdbc;

    private Members members;

    @BeforeEach
    void startWithNobody() {
        jdbc.update("delete from member");
        members = new Members(rows, passphrases, transaction, clock);
    }

    @Test
    void keepsTheFirstAccount() {
        assertThat(members.anyone()).isFalse();
        Member mara = members.addFirst(newcomer("Mara")).orElseThrow();
        assertThat(members.anyone()).isTrue();
        assertThat(mara.name()).isEqualTo("Mara");
        assertThat(mara.units()).isEqualTo(UnitSystem.GRAM_MILLIMETRE);
        assertThat(members.byId(mara.id())).contains(mara);
    }

    @Test
    void keepsAHashInPlaceOfThePassphrase() {
        members.addFirst(newcomer("Mara"));
        String stored = jdbc.queryForObject("select passphrase_hash from member", String.class);
        assertThat(stored).startsWith("{pbkdf2-600k}").doesNotContain("peat bog at dawn");
        assertThat(passphrases.matches("peat bog at dawn", stored)).isTrue();
        assertThat(passphrases.matches("peat bog at dusk", stored)).isFalse();
    }

    @Test
    void readsAPassphraseToItsEnd() {
        String beginning = "ä".repeat(NewMember.PASSPHRASE_AT_MOST - 1);
        String stored = passphrases.encode(beginning + "x");
        assertThat(passphrases.matches(beginning + "x", stored)).isTrue();
        assertThat(passphrases.matches(beginning + "y", stored)).isFalse();
    }

    @Test
    void letsOneWinWhenSeveralCreateTheFirstAccountAtOnce() throws Exception {
        List<Callable<Optional<Member>>> race = IntStream.range(0, 4)
                .mapToObj(i -> (Callable<Optional<Member>>) () -> members.addFirst(newcomer("Racer " + i)))
                .toList();
        ExecutorService runners = Executors.newFixedThreadPool(race.size());
        try {
            int winners = 0;
            for (Future<Optional<Member>> run : runners.invokeAll(race)) {
                winners += run.get().isPresent() ? 1 : 0;
            }
            assertThat(winners).isEqualTo(1);
        } finally {
            runners.shutdownNow();
        }
        assertThat(rows.count()).isEqualTo(1);
    }

    @Test
    void refusesASecondFirstAccountEvenWhereNobodyLooked() {
        rows.save(MemberRow.founder("Mara", "hash", clock.instant()));
        assertThatExceptionOfType(DataIntegrityViolationException.class)
                .isThrownBy(() -> rows.save(MemberRow.founder("Jonas", "hash", clock.instant())));
    }

    @Test
    void tellsNamesApartByMoreThanUpperAndLowerCase() {
        String insert = "insert into member (name, name_folded, passphrase_hash, units, joined_at)"
                + " values (?, ?, 'hash', 'GRAM_MILLIMETRE', current_timestamp)";
        jdbc.update(insert, "Jörg Groß", MemberRow.folded("Jörg Groß"));
        assertThat(rows.findByNameFolded(MemberRow.folded(" JO\u0308RG GROSS ")))
                .isPresent();
        assertThatExceptionOfType(DataIntegrityViolationException.class)
                .isThrownBy(() -> jdbc.update(insert, "jörg gross", MemberRow.folded("jörg gross")));
    }

    @Test
    void takesTheLongestNames() {
        String longest = "\u0390".repeat(NewMember.NAME_AT_MOST);
        Member member = members.addFirst(newcomer(longest)).orElseThrow();
        assertThat(members.byId(member.id()).orElseThrow().name()).isEqualTo(longest);
    }

    @Test
    void remembersTheUnitsOfAMember() {
        Member mara = members.addFirst(newcomer("Mara")).orElseThrow();
        members.chooseUnits(mara.id(), UnitSystem.OUNCE_INCH);
        assertThat(members.byId(mara.id()).orElseThrow().units()).isEqualTo(UnitSystem.OUNCE_INCH);
    }

    private static NewMember newcomer(String name) {
        return new NewMember(name, "peat bog at dawn");
    }
}
