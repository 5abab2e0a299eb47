package dev.ledgerwing.report.cli;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.core.file.BuildReading;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.sheet.Fingerprint;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The build files that a person named. */
final class BuildFiles {

    private BuildFiles() {}

    /** One file that could be read, and the fingerprint of its bytes. */
    record Read(Path path, String fingerprint, Build build) {

        BuildReview review() {
            return BuildReview.of(build);
        }
    }

    /** Reads one file, or says everything that is wrong with it. */
    static Read read(Path path) throws Unusable {
        byte[] bytes = bytes(path, BuildFile.LARGEST_BYTES);
        BuildReading reading = BuildFile.read(bytes);
        Build build = reading.build().orElse(null);
        if (build == null) {
            throw new Unusable(reading.problems().stream()
                    .map(problem -> path + ": " + problem)
                    .toList());
        }
        return new Read(path, Fingerprint.of(bytes), build);
    }

    /** Reads all of them, a folder standing for the build files in it, or says everything that is wrong with any. */
    static List<Read> readAll(List<Path> named) throws Unusable {
        List<String> problems = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        for (Path path : named) {
            collect(problems, () -> files.addAll(files(path)));
        }
        List<Read> read = new ArrayList<>();
        for (Path file : files) {
            collect(problems, () -> read.add(read(file)));
        }
        if (!problems.isEmpty()) {
            throw new Unusable(problems);
        }
        return read;
    }

    private interface Step {

        void take() throws Unusable;
    }

    private static void collect(List<String> problems, Step step) {
        try {
            step.take();
        } catch (Unusable unusable) {
            problems.addAll(unusable.problems());
        }
    }

    private static List<Path> files(Path path) throws Unusable {
        if (!Files.isDirectory(path)) {
            return List.of(path);
        }
        try (Stream<Path> entries = Files.list(path)) {
            List<Path> files = entries.filter(BuildFiles::isBuildFile).sorted().toList();
            if (files.isEmpty()) {
                throw new Unusable(path + ": the folder holds no build files (*.json)");
            }
            return files;
        } catch (IOException unreadable) {
            throw new Unusable(Problems.sentence(unreadable));
        }
    }

    private static boolean isBuildFile(Path path) {
        return Files.isRegularFile(path)
                && path.toString().toLowerCase(Locale.ROOT).endsWith(".json");
    }

    /** The file's bytes, at most one more than {@code most}: enough to see that it is too large. */
    static byte[] bytes(Path path, int most) throws Unusable {
        if (Files.isDirectory(path)) {
            throw new Unusable(path + ": is a folder, not a file");
        }
        try (InputStream stream = Files.newInputStream(path)) {
            return stream.readNBytes(most + 1);
        } catch (IOException unreadable) {
            throw new Unusable(Problems.sentence(unreadable));
        }
    }
}
