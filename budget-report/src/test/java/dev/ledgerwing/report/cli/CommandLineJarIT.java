package dev.ledgerwing.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.RadioBuilds;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged jar as a person runs it, on a machine whose own character set is not UTF-8. */
class CommandLineJarIT {

    private static final Path JAR = Path.of("target", "budget-report-cli.jar");

    @TempDir
    private Path folder;

    @Test
    void saysThatSomethingBreaksInUtf8AndNothingElse() throws Exception {
        Run run = run("review", write(Builds.withTarget(Builds.complete(), 900)));

        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith("Skiff Żółw, stage Build")
                .contains("▲ breaks")
                .endsWith("Something breaks.\n");
        assertThat(run.code()).isEqualTo(1);
    }

    @Test
    void writesSheetsAndLeavesNoListOfFontsInTheHomeFolder() throws Exception {
        Path out = folder.resolve("out");

        Run run = run("sheets", write(Builds.skiff()), "--out", out, "--pdf");

        assertThat(run).isEqualTo(new Run(0, out.resolve("index.html") + "\n", ""));
        assertThat(out.resolve("skiff-build.pdf")).isNotEmptyFile();
        try (Stream<Path> left = Files.list(home())) {
            assertThat(left).allMatch(path -> path.endsWith(".java")); // the virtual machine's own
        }
    }

    @Test
    void printsThePlanOfTheChannels() throws Exception {
        Run run = run("channels", write(RadioBuilds.shared()), "--json");

        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("\"outcome\" : \"FITS\"", "\"plan\" : \"RECORDED\"");
    }

    @Test
    void namesAFileThatCannotBeUsedWithoutAStackTrace() throws Exception {
        Path file = Files.writeString(folder.resolve("broken.json"), "{}");

        Run run = run("review", file, "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).singleElement().asString().startsWith("budget-report: " + file + ": format: ");
    }

    @Test
    void bringsTheQuietLogOfItsOwnAndNoOther() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            assertThat(jar.stream().map(entry -> entry.getName().replaceFirst(".*/", "")))
                    .anyMatch(name -> name.startsWith("slf4j-nop-"))
                    .noneMatch(name -> name.startsWith("logback-"));
        }
    }

    private Path write(Build build) throws IOException {
        return Files.write(folder.resolve("build.json"), BuildFile.write(build));
    }

    private Path home() throws IOException {
        return Files.createDirectories(folder.resolve("home"));
    }

    private Run run(Object... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=ISO-8859-1",
                "-Duser.language=tr",
                "-Duser.home=" + home(),
                "-jar",
                JAR.toString()));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        Path out = folder.resolve("stdout");
        Path err = folder.resolve("stderr");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        int code = process.waitFor();
        return new Run(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }
}
