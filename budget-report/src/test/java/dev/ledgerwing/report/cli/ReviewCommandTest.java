package dev.ledgerwing.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.PowerBuilds;
import dev.ledgerwing.seed.SeedAirframe;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReviewCommandTest {

    @TempDir
    private Path folder;

    @Test
    void exitsWith0WhenNothingBreaks() throws IOException {
        Run run = review(PowerBuilds.supplied(Builds.winged()));

        assertThat(run.code()).isZero();
        assertThat(run.out()).endsWith("\nNothing breaks; something is tight.\n");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void exitsWith1WhenSomethingBreaks() throws IOException {
        Run run = review(Builds.withTarget(Builds.complete(), 900));

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("▲ breaks by ").endsWith("\nSomething breaks.\n");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void neverShowsWhatIsNotKnownAsFine() throws IOException {
        Run run = review(Builds.skiff());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("◇ not known", "at least ", "at most ")
                .endsWith("\nNothing is known to break, but not everything is known.\n");
    }

    @Test
    void printsTheTextAsBefore() throws IOException {
        Golden.assertMatches("review.txt", review(Builds.skiff()).out());
    }

    @Test
    void printsTheBalanceOfAWingAsBefore() throws IOException {
        Golden.assertMatches("review-winged.txt", review(Builds.winged()).out());
        Golden.assertMatches(
                "review-winged.json", review(Builds.winged(), "--json").out());
    }

    @Test
    void printsTheSupplyAsBefore() throws IOException {
        Golden.assertMatches("review-power.txt", review(PowerBuilds.sunny()).out());
        Golden.assertMatches(
                "review-power.json", review(PowerBuilds.sunny(), "--json").out());
    }

    @Test
    void printsTheJsonAsBefore() throws IOException {
        Golden.assertMatches("review.json", review(Builds.skiff(), "--json").out());
    }

    @Test
    void givesTheSameExitCodeWithJson() throws IOException {
        assertThat(review(Builds.withTarget(Builds.complete(), 900), "--json").code())
                .isEqualTo(1);
    }

    @Test
    void fitsATerminalOf80Columns() throws IOException {
        for (SeedAirframe airframe : SeedFleet.airframes()) {
            assertThat(review(airframe.last().build()).out().lines())
                    .allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        }
    }

    @Test
    void exitsWith2AndNamesEveryProblemWithItsPlace() throws IOException {
        String text = new String(BuildFile.write(Builds.skiff()), StandardCharsets.UTF_8)
                .replace("\"quantity\" : 12", "\"quantity\" : -12")
                .replace("\"stage\" : \"BUILD\"", "\"stage\" : \"SOMEDAY\"");
        Path file = Files.writeString(folder.resolve("wrong.json"), text);

        Run run = Run.of("review", file);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines())
                .hasSize(2)
                .allMatch(line -> line.startsWith("budget-report: " + file + ": "))
                .anyMatch(line -> line.contains("airframe.stage"))
                .anyMatch(line -> line.contains("lines[5].quantity"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "\u0000", "{\"format\":\"other/1\"}", "{\"a\":1,\"a\":2}", "NaN"})
    void exitsWith2ForAFileThatIsNoBuildFile(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("other.json"), text);

        Run run = Run.of("review", file, "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).singleElement().asString().startsWith("budget-report: " + file + ": ");
        assertThat(run.err()).doesNotContain("Exception", "\tat ");
    }

    @Test
    void exitsWith2ForAFileThatIsNotThereOrIsAFolder() {
        assertThat(Run.of("review", folder.resolve("missing.json")))
                .isEqualTo(new Run(
                        2, "", "budget-report: " + folder.resolve("missing.json") + ": there is no such file\n"));
        assertThat(Run.of("review", folder))
                .isEqualTo(new Run(2, "", "budget-report: " + folder + ": is a folder, not a file\n"));
    }

    @Test
    void refusesAFileThatIsTooLargeWithoutReadingAllOfIt() throws IOException {
        Path file = folder.resolve("large.json");
        try (var channel = Files.newByteChannel(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            channel.position(3L << 30).write(ByteBuffer.wrap(new byte[] {'x'}));
        }

        Run run = Run.of("review", file);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("larger than 16 MB");
    }

    @Test
    void sendsNoControlCharactersOfANameToTheTerminal() throws IOException {
        Run run = review(Builds.called(Builds.complete(), "skiff", "Skiff\u009b31m\u202e"));

        assertThat(run.out()).startsWith("Skiff\uFFFD31m\uFFFD, stage Build\n");
    }

    private Run review(Build build, Object... options) throws IOException {
        Path file = Files.write(folder.resolve(build.airframe().code() + ".json"), BuildFile.write(build));
        Object[] words = new Object[options.length + 2];
        words[0] = "review";
        words[1] = file;
        System.arraycopy(options, 0, words, 2, options.length);
        return Run.of(words);
    }
}
