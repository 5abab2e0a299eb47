package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.InvalidBuild;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class TableImportTest {

    private static final TableReading READING = Tables.read(
            "Part,Qty,Mass [g],Assembly,Station x [mm],State",
            "Main spar,2,84.5,wing,520,fitted",
            "Fin,1,?,Tail surfaces,,",
            "Höhenruder,1,19.8,Höhenleitwerk,1420,",
            "Motor,1,118,,-40,");

    @Test
    void appendsTheRowsInTheirOrderBehindTheLinesThatAreThere() {
        Build build = TableImport.APPEND.into(Builds.small(), READING, ids());

        assertThat(build.lines())
                .extracting(PartLine::name)
                .containsExactly("Spar", "Servo", "Glue", "Main spar", "Fin", "Höhenruder", "Motor");
        assertThat(build.lines())
                .extracting(PartLine::assembly)
                .endsWith("wing", "tail-surfaces", "hoehenleitwerk", "parts");
        assertThat(build.lines().subList(0, 3)).isEqualTo(Builds.small().lines());
    }

    @Test
    void takesOverWhatTheRowsSay() {
        Build build = TableImport.REPLACE.into(Builds.small(), READING, ids());
        PartLine spar = build.lines().get(0);
        PartLine fin = build.lines().get(1);

        assertThat(build.lines()).hasSize(4);
        assertThat(spar.totalMass()).isEqualTo(Mass.ofGrams(169));
        assertThat(spar.state()).isEqualTo(FitState.FITTED);
        assertThat(spar.place().station())
                .isNotNull()
                .matches(station -> station.x().mm() == 520);
        assertThat(fin.isMassKnown()).isFalse();
        assertThat(fin.place().station()).isNull();
    }

    @Test
    void newAssembliesAreAddedBehindTheOthersWithCodesFromTheirNames() {
        Build build = TableImport.APPEND.withLooseAssembly("Odds and ends").into(Builds.small(), READING, ids());

        assertThat(build.assemblies())
                .extracting(Assembly::code)
                .containsExactly("wing", "nose", "tail-surfaces", "hoehenleitwerk", "odds-and-ends");
        assertThat(build.assemblies())
                .extracting(Assembly::movesWith)
                .containsExactly(MovesWith.WING, MovesWith.NOSE, MovesWith.TAIL, MovesWith.TAIL, MovesWith.FUSELAGE);
    }

    @Test
    void codesAreMadeUniqueAndFit() {
        String longName = "A very long name of an assembly that nobody would";
        AssemblyCodes codes = new AssemblyCodes(List.of(new Assembly("hull", "Hull", MovesWith.FUSELAGE)));

        assertThat(codes.codeFor("Hull")).isEqualTo("hull");
        assertThat(codes.codeFor("hull!")).isEqualTo("hull-2");
        assertThat(codes.codeFor("=+@")).isEqualTo("assembly");
        assertThat(codes.codeFor("翼")).isEqualTo("assembly-2");
        assertThat(codes.codeFor(longName + " 1")).isEqualTo("a-very-long-name-of-an-assembly-that-nob");
        assertThat(codes.codeFor(longName + " 2")).isEqualTo("a-very-long-name-of-an-assembly-th-2");
        assertThat(codes.all()).hasSize(6);
    }

    @Test
    void makesAWholeBuildOutOfABlankOne() {
        Build blank = Build.blank(Builds.airframe("Dunlin"), Builds.target(2000));

        assertThat(TableImport.APPEND.into(blank, READING, ids()).assemblies())
                .extracting(Assembly::name)
                .containsExactly("wing", "Tail surfaces", "Höhenleitwerk", "Parts");
    }

    @Test
    void whatIsWithinTheRangesOfTheReaderIsWithinThoseOfTheRecord() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [kg],Assembly,Station x [mm],Station y [mm],Part no,Supplier,Cost each,Note",
                String.join(
                        ",",
                        "x".repeat(Limits.LONGEST_NAME),
                        "100000",
                        "1000",
                        "y".repeat(Limits.LONGEST_NAME),
                        "-100000",
                        "100000",
                        "z".repeat(Limits.LONGEST_PART_CODE),
                        "s".repeat(Limits.LONGEST_SUPPLIER),
                        "1000000000",
                        "n".repeat(Limits.LONGEST_NOTE)));

        assertThat(TableImport.APPEND.into(Builds.small(), reading, ids()).lines())
                .last()
                .matches(line -> line.totalMass().grams() == 1e11);
    }

    @Test
    void whatIsBeyondThemIsAProblemOfItsCell() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [kg],Station x [mm],Part no,Supplier",
                "A,100001,1,1,,",
                "B,1,1000.001,1,,",
                "C,1,1,-100000.001,,",
                "D,1,1,1," + "z".repeat(Limits.LONGEST_PART_CODE + 1) + ",",
                "E,1,1,1,," + "s".repeat(Limits.LONGEST_SUPPLIER + 1));

        assertThat(Tables.places(reading.problems())).containsExactly("2:2", "3:3", "4:4", "5:5", "6:6");
    }

    @Test
    void refusesATableWithAProblem() {
        TableReading broken = Tables.read("Part,Mass [g]", "Spar,12", "Rib,heavy");
        TableReading empty = Tables.read("Part,Mass [g]");

        assertThatIllegalStateException().isThrownBy(() -> TableImport.APPEND.into(Builds.small(), broken, ids()));
        assertThatIllegalStateException().isThrownBy(() -> TableImport.APPEND.into(Builds.small(), empty, ids()));
    }

    @Test
    void refusesToReplaceALineThatALoadCaseRefersTo() {
        Build small = Builds.small();
        LoadCase without = new LoadCase(
                "bare",
                "Without glue",
                LoadCase.Purpose.GROUND,
                false,
                List.of("L003"),
                Map.of(),
                List.of(),
                List.of());
        Build build = small.withLoadCases(List.of(LoadCase.everythingAboard(), without));

        assertThatThrownBy(() -> TableImport.REPLACE.into(build, READING, ids()))
                .isInstanceOf(InvalidBuild.class)
                .hasMessageContaining("L003");
    }

    private static Supplier<String> ids() {
        AtomicInteger last = new AtomicInteger();
        return () -> "N" + last.incrementAndGet();
    }
}
