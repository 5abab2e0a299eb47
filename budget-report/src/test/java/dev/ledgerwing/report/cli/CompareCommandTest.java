package dev.ledgerwing.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

    @TempDir
    private Path folder;

    private Path before = Path.of("");
    private Path after = Path.of("");

    @BeforeEach
    void writeTwoBuilds() throws IOException {
        before = Files.write(folder.resolve("before.json"), BuildFile.write(Builds.skiff()));
        after = Files.write(folder.resolve("after.json"), BuildFile.write(Builds.withTarget(Builds.complete(), 900)));
    }

    @Test
    void printsTheDifferenceAsBefore() throws IOException {
        Run run = Run.of("compare", before, after);

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        Golden.assertMatches("compare.txt", run.out());
    }

    @Test
    void printsTheJsonAsBefore() throws IOException {
        Golden.assertMatches(
                "compare.json", Run.of("compare", before, after, "--json").out());
    }

    @Test
    void saysThatNothingDiffers() {
        assertThat(Run.of("compare", before, before).out()).startsWith("◇ not known  Mass unchanged, ");
    }

    @Test
    void exitsWith2WhenOneOfThemCannotBeUsed() {
        Run run = Run.of("compare", before, folder.resolve("missing.json"));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("missing.json: there is no such file");
    }
}
