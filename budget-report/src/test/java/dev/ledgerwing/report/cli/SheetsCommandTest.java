package dev.ledgerwing.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.report.Builds;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {

    @TempDir
    private Path folder;

    private Path fleet = Path.of("");
    private Path out = Path.of("");

    @BeforeEach
    void writeAFleet() throws IOException {
        fleet = Files.createDirectory(folder.resolve("fleet"));
        out = folder.resolve("sheets");
        write(Builds.skiff(), "one.json");
        write(Builds.called(Builds.complete(), "index", "Second"), "two.JSON");
        Files.writeString(fleet.resolve("notes.txt"), "no build file");
    }

    @Test
    void writesASheetForEveryBuildFileOfAFolder() throws IOException {
        Run run = Run.of("sheets", fleet, "--out", out, "--pdf");

        assertThat(run).isEqualTo(new Run(0, out.resolve("index.html") + "\n", ""));
        assertThat(names(out))
                .contains(
                        "index.html",
                        "skiff-build.html",
                        "skiff-build.pdf",
                        "skiff-balance.html",
                        "skiff-balance.pdf",
                        "skiff-power.html",
                        "skiff-power.pdf",
                        "skiff-radio.html",
                        "skiff-radio.pdf",
                        "skiff-outputs.html",
                        "skiff-outputs.pdf",
                        "index-build.html",
                        "index-build.pdf",
                        "paper");
        assertThat(Files.readAllBytes(out.resolve("skiff-build.pdf")))
                .startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void writesNoPdfUnlessAsked() throws IOException {
        Run.of("sheets", fleet, "--out", out);

        assertThat(names(out)).noneMatch(name -> name.endsWith(".pdf"));
    }

    @Test
    void printsTheDateThatItIsGiven() throws IOException {
        Run.of("sheets", fleet, "--out", out, "--date", "2026-11-24");
        assertThat(Files.readString(out.resolve("skiff-build.html"))).contains("24 Nov 2026", "draft");

        Run.of("sheets", fleet, "--out", out);
        assertThat(Files.readString(out.resolve("skiff-build.html"))).contains("not given");
    }

    @Test
    void replacesItsOwnFilesAndLeavesOthersAlone() throws IOException {
        Run.of("sheets", fleet, "--out", out);
        Files.writeString(out.resolve("mine.txt"), "mine");
        Files.writeString(out.resolve("index.html"), "old");

        Run run = Run.of("sheets", fleet.resolve("one.json"), "--out", out);

        assertThat(run.code()).isZero();
        assertThat(Files.readString(out.resolve("index.html"))).contains("Skiff");
        assertThat(out.resolve("mine.txt")).hasContent("mine");
        assertThat(out.resolve("index-build.html")).exists();
        assertThat(names(out)).noneMatch(name -> name.endsWith(".part"));
    }

    @Test
    void overwritesNoFileThatItDidNotWrite() throws IOException {
        Files.createDirectory(out);
        Files.writeString(out.resolve("index.html"), "my own page");

        Run run = Run.of("sheets", fleet, "--out", out);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo(
                        "budget-report: " + out
                                + ": index.html is there already and was not written by budget-report: choose another folder\n");
        assertThat(names(out)).containsExactly("index.html");
        assertThat(out.resolve("index.html")).hasContent("my own page");
    }

    @Test
    void followsNoLinkOutOfTheFolder() throws IOException {
        Path outside = Files.createDirectory(folder.resolve("outside"));
        Files.createDirectory(out);
        Files.createSymbolicLink(out.resolve("paper"), outside);

        Run run = Run.of("sheets", fleet, "--out", out);

        assertThat(run.code()).isEqualTo(2);
        assertThat(names(outside)).isEmpty();
    }

    @Test
    void replacesALinkInPlaceOfOneOfItsFilesAndNotWhatItLeadsTo() throws IOException {
        Run.of("sheets", fleet, "--out", out);
        Path outside = Files.writeString(folder.resolve("outside.html"), "outside");
        Files.delete(out.resolve("index.html"));
        Files.createSymbolicLink(out.resolve("index.html"), outside);

        assertThat(Run.of("sheets", fleet, "--out", out).code()).isZero();

        assertThat(outside).hasContent("outside");
        assertThat(out.resolve("index.html")).isRegularFile();
        assertThat(Files.isSymbolicLink(out.resolve("index.html"))).isFalse();
    }

    @Test
    void refusesTwoFilesAboutOneAirframe() throws IOException {
        Path again = write(Builds.complete(), "again.json");

        Run run = Run.of("sheets", fleet, "--out", out);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo("budget-report: " + fleet.resolve("one.json") + ": is about the airframe “skiff”, as "
                        + again + " is: name one of them\n");
        assertThat(out).doesNotExist();
    }

    @Test
    void writesNothingWhenOneFileCannotBeUsed() throws IOException {
        Files.writeString(fleet.resolve("broken.json"), "{");
        Files.writeString(fleet.resolve("empty.json"), "");

        Run run = Run.of("sheets", fleet, "--out", out);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(2).allMatch(line -> line.startsWith("budget-report: " + fleet));
        assertThat(out).doesNotExist();
    }

    @Test
    void refusesAFolderWithoutBuildFiles() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));

        assertThat(Run.of("sheets", empty, "--out", out).err())
                .isEqualTo("budget-report: " + empty + ": the folder holds no build files (*.json)\n");
    }

    @Test
    void refusesToWriteIntoAFile() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");

        Run run = Run.of("sheets", fleet, "--out", file);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).singleElement().asString().startsWith("budget-report: " + file);
    }

    private Path write(Build build, String name) throws IOException {
        return Files.write(fleet.resolve(name), BuildFile.write(build));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).toList();
        }
    }
}
