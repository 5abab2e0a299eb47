package dev.ledgerwing.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableCommandTest {

    @TempDir
    private Path folder;

    @Test
    void saysHowItUnderstoodTheTable() throws IOException {
        Run run = Run.of("table", table("Dunlin floats.csv", SeedFleet.partsTable()));

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        Golden.assertMatches("table.txt", run.out());
        assertThat(run.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    }

    @Test
    void saysTheSameAsJson() throws IOException {
        Golden.assertMatches(
                "table.json",
                Run.of("table", table("floats.csv", SeedFleet.partsTable()), "--json")
                        .out());
    }

    @Test
    void makesABuildFileThatItsOwnReviewCanRead() throws IOException {
        Path out = folder.resolve("floats.json");

        Run run = Run.of("table", table("Dunlin floats.csv", SeedFleet.partsTable()), "--out", out);

        assertThat(run.code()).isZero();
        Build build = BuildFile.readOwn(Files.readAllBytes(out));
        assertThat(build.airframe().code()).isEqualTo("dunlin-floats");
        assertThat(build.airframe().name()).isEqualTo("Dunlin floats");
        assertThat(build.lines()).hasSize(25).extracting(PartLine::id).startsWith("L001", "L002");
        assertThat(Run.of("review", out).code()).isZero();
    }

    @Test
    void callsTheAirframeAsItIsTold() throws IOException {
        Path out = folder.resolve("floats.json");

        Run.of("table", table("t.csv", SeedFleet.partsTable()), "--out", out, "--code", "teal", "--name", "Teal");

        Build build = BuildFile.readOwn(Files.readAllBytes(out));
        assertThat(build.airframe().code()).isEqualTo("teal");
        assertThat(build.airframe().name()).isEqualTo("Teal");
    }

    @Test
    void refusesACodeThatIsNone() throws IOException {
        Path out = folder.resolve("floats.json");

        Run run = Run.of("table", table("t.csv", SeedFleet.partsTable()), "--out", out, "--code", "../etc");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("budget-report: --code or --name: code must be lower-case letters");
        assertThat(out).doesNotExist();
    }

    @Test
    void exitsWith2AndNamesEveryProblemByRow() throws IOException {
        Path out = folder.resolve("out.json");
        Path file = table("t.csv", "Part,Qty,Mass [g]\nSpar,1,12*x\nRib,-2,3\nSkin,1,5\n");

        Run run = Run.of("table", file, "--out", out);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines())
                .hasSize(2)
                .anyMatch(line -> line.startsWith("budget-report: " + file + ": row 2, column 3: "))
                .anyMatch(line -> line.startsWith("budget-report: " + file + ": row 3, column 2: "));
        assertThat(run.out()).contains("Parts  1, together 5 g; rows with a problem are not among them");
        assertThat(out).doesNotExist();
    }

    @Test
    void saysWhyAFileCannotBeReadAtAll() throws IOException {
        Run run = Run.of("table", table("t.csv", "\u0000\u0001"), "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.out()).contains("\"usable\" : false");
    }

    @Test
    void takesWhatAPersonSaysOfAColumn() throws IOException {
        Path file = table("t.csv", "Spar,2,1\nRib,12,0.5\n");
        Path out = folder.resolve("out.json");

        assertThat(Run.of("table", file).code()).isEqualTo(2);
        Run run = Run.of(
                "table",
                file,
                "--column",
                "1=name",
                "--column",
                "2=quantity",
                "--column",
                "3=unit-mass:oz",
                "--out",
                out);

        assertThat(run.err()).isEmpty();
        PartLine spar = BuildFile.readOwn(Files.readAllBytes(out)).lines().get(0);
        assertThat(spar.quantity()).isEqualTo(2);
        assertThat(spar.totalMass().grams()).isEqualTo(56.7);
    }

    @Test
    void saysWhatAColumnCanHold() throws IOException {
        Run run = Run.of("table", table("t.csv", "Part,Qty\n"), "--column", "2=weight");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("“weight” is no meaning of a column; there are name, quantity, unit-mass, ");
    }

    @Test
    void overwritesNothing() throws IOException {
        Path out = Files.writeString(folder.resolve("there.json"), "mine");

        Run run = Run.of("table", table("t.csv", SeedFleet.partsTable()), "--out", out);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("budget-report: " + out + ": is there already, name another file\n");
        assertThat(out).hasContent("mine");
    }

    private Path table(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Path table(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }
}
