package dev.ledgerwing.web.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Conflict;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.deskprocess.DeskApplication;
import jakarta.persistence.EntityManagerFactory;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.JdbcTemplate;

/** What the desk promises, whichever database is below it. */
@SpringBootTest(
        classes = DeskApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.NONE,
        properties = {
            "spring.jpa.hibernate.ddl-auto=validate",
            "spring.jpa.properties.hibernate.generate_statistics=true",
            "ledgerwing.compact-on-stop=false"
        })
abstract class DeskContract {

    private static final Signature MARA = new Signature("Mara", "because");

    @Autowired
    Desk desk;

    @Autowired
    Readings readings;

    @Autowired
    CacheRebuild cacheRebuild;

    @Autowired
    JdbcTemplate jdbc;

    @Autowired
    EntityManagerFactory entityManagerFactory;

    private final String code = "a" + UUID.randomUUID().toString().substring(0, 18);

    private Snapshot opened() {
        return desk.open(build(code), MARA, Instant.parse("2026-03-01T09:00:00.123456Z"));
    }

    private static Build build(String code) {
        return Build.blank(
                        new Airframe(code, "Dunlin " + code, null, Stage.DESIGN, "nose tip"),
                        new MassBudget(Mass.ofGrams(2000), null, null, null))
                .withAssemblies(List.of(new Assembly("wing", "Wing", Assembly.MovesWith.WING)))
                .withLines(List.of(line("L001", 120), line("L002", 80)));
    }

    private static PartLine line(String id, double grams) {
        return PartLine.named(
                id, "wing", "Spar " + id, Category.STRUCTURE, 1, LineMass.of(Mass.ofGrams(grams), Basis.GUESSED));
    }

    private static Deed mass(String id, double grams) {
        return Deed.fitting(
                "mass of " + id,
                seen -> seen.withLines(seen.lines().stream()
                        .map(line -> line.id().equals(id)
                                ? line.withMass(LineMass.of(Mass.ofGrams(grams), Basis.WEIGHED))
                                : line)
                        .toList()));
    }

    private static Deed add(String id) {
        return Deed.fitting("add " + id, seen -> {
            List<PartLine> lines = new ArrayList<>(seen.lines());
            lines.add(line(id, 10));
            return seen.withLines(lines);
        });
    }

    private static Outcome.Landed landed(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Landed.class);
        return (Outcome.Landed) outcome;
    }

    @Test
    void theFirstRevisionReadsBackAsItWasMade() {
        Snapshot opened = opened();
        Snapshot read = readings.head(code);

        assertThat(read.build()).isEqualTo(opened.build());
        assertThat(read.revision()).isEqualTo(opened.revision());
        assertThat(read.revision().number()).isEqualTo(1);
        assertThat(read.revision().moment()).isEqualTo(Instant.parse("2026-03-01T09:00:00.123456Z"));
        assertThat(readings.document(new Seen(code, 1))).isEqualTo(BuildFile.write(opened.build()));
        assertThat(Packed.sha256(readings.document(new Seen(code, 1)))).isEqualTo(read.fingerprint());
    }

    @Test
    void refusesASecondAirframeOfTheSameCode() {
        opened();

        assertThatExceptionOfType(AirframeCodeTaken.class).isThrownBy(this::opened);
    }

    @Test
    void mergesWhatTwoMembersChangedFromTheSameRevision() {
        opened();
        landed(desk.change(new Seen(code, 1), mass("L001", 111), MARA));

        Outcome.Landed second = landed(desk.change(new Seen(code, 1), mass("L002", 77), MARA));

        assertThat(second.landedOn()).isEqualTo(2);
        assertThat(second.head().revision().number()).isEqualTo(3);
        assertThat(second.head().build().lines())
                .extracting(line -> line.totalMass().grams())
                .containsExactly(111.0, 77.0);
    }

    @Test
    void namesWhatClashesAndWritesNothing() {
        opened();
        landed(desk.change(new Seen(code, 1), mass("L001", 111), MARA));

        Outcome outcome = desk.change(new Seen(code, 1), mass("L001", 99), MARA);

        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Outcome.Clash.class,
                        clash -> assertThat(clash.conflicts())
                                .containsExactly(
                                        new Conflict("part “Spar L001”", "mass", "set differently on both sides")));
        assertThat(readings.head(code).revision().number()).isEqualTo(2);
    }

    @Test
    void aComputedDeedIsStaleAfterAnyChange() {
        opened();
        landed(desk.change(new Seen(code, 1), mass("L002", 77), MARA));
        Deed plain = mass("L001", 99);

        Outcome outcome =
                desk.change(new Seen(code, 1), new Deed(plain.title(), plain.nature(), plain.wanted(), true), MARA);

        assertThat(outcome).isInstanceOf(Outcome.Clash.class);
    }

    @Test
    void saysWhenNothingChangedAndWhenTheRecordWouldNotFit() {
        opened();

        assertThat(desk.change(new Seen(code, 1), Deed.fitting("nothing", seen -> seen), MARA))
                .isInstanceOf(Outcome.NothingChanged.class);
        assertThat(desk.change(
                        new Seen(code, 1), Deed.fitting("no wing", seen -> seen.withAssemblies(List.of())), MARA))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.sentences()).containsOnly("there is no assembly “wing”"));
        assertThat(readings.history(code)).hasSize(1);
    }

    @Test
    void takesARevisionBackAsANewOneAndKeepsWhatCameAfter() {
        opened();
        landed(desk.change(new Seen(code, 1), mass("L001", 111), MARA));
        landed(desk.change(new Seen(code, 2), mass("L002", 77), MARA));

        Outcome.Landed undone = landed(desk.undo(new Seen(code, 2), MARA));

        assertThat(undone.head().revision().number()).isEqualTo(4);
        assertThat(undone.head().build().lines())
                .extracting(line -> line.totalMass().grams())
                .containsExactly(120.0, 77.0);
        assertThat(readings.history(code)).extracting(Revision::number).containsExactly(4, 3, 2, 1);
        assertThat(readings.change(new Seen(code, 4)).edits()).hasSize(1);
    }

    @Test
    void theCachesFollowAndCanBeRebuilt() {
        opened();
        landed(desk.change(new Seen(code, 1), add("L003"), MARA));
        landed(desk.change(new Seen(code, 2), mass("L001", 50), MARA));
        landed(desk.change(
                new Seen(code, 3),
                Deed.fitting("remove", seen -> seen.withLines(seen.lines().subList(0, 2))),
                MARA));
        List<String> rows = lineRows();
        assertThat(rows).containsExactly("L001 50000", "L002 80000");

        jdbc.update("update airframe set cache_version = 0, basic_mg = 1 where code = ?", code);
        jdbc.update(
                "delete from line_row where line_id = 'L002' and airframe_id = "
                        + "(select id from airframe where code = ?)",
                code);
        cacheRebuild.afterSingletonsInstantiated();

        assertThat(lineRows()).isEqualTo(rows);
        assertThat(headline().basic()).isEqualTo(Mass.ofGrams(130));
    }

    private AirframeHeadline headline() {
        return readings.fleet().stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private List<String> lineRows() {
        return jdbc.queryForList(
                "select line_id || ' ' || unit_mass_mg from line_row where airframe_id ="
                        + " (select id from airframe where code = ?) order by line_id",
                String.class,
                code);
    }

    @Test
    void tenWritersLeaveNoGapAndLoseNothing() throws Exception {
        opened();
        ExecutorService writers = Executors.newFixedThreadPool(10);
        List<Callable<Outcome>> work = IntStream.range(0, 40)
                .<Callable<Outcome>>mapToObj(i -> () -> desk.change(new Seen(code, 1), add("N" + i), MARA))
                .toList();
        for (Future<Outcome> done : writers.invokeAll(work)) {
            landed(done.get());
        }
        writers.shutdown();

        assertThat(readings.history(code))
                .extracting(Revision::number)
                .containsExactlyElementsOf(
                        IntStream.iterate(41, i -> i >= 1, i -> i - 1).boxed().toList());
        assertThat(readings.head(code).build().lines()).hasSize(42);
    }

    @Test
    void theFleetTakesOneQueryHoweverManyAirframes() {
        opened();
        Statistics statistics =
                entityManagerFactory.unwrap(SessionFactory.class).getStatistics();
        statistics.clear();

        assertThat(readings.fleet()).isNotEmpty();

        assertThat(statistics.getPrepareStatementCount()).isEqualTo(1);
    }

    @Test
    void saysWhenThereIsNoSuchAirframeOrRevision() {
        assertThatExceptionOfType(AirframeNotFound.class).isThrownBy(() -> readings.head("no-such"));
        opened();
        assertThatExceptionOfType(AirframeNotFound.class).isThrownBy(() -> readings.at(new Seen(code, 9)));
        assertThatExceptionOfType(AirframeNotFound.class)
                .isThrownBy(() -> desk.change(new Seen(code, 9), mass("L001", 1), MARA));
        assertThatExceptionOfType(AirframeNotFound.class).isThrownBy(() -> desk.undo(new Seen(code, 1), MARA));
    }
}
