package dev.ledgerwing.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares text with a file under {@code src/test/resources/golden}; {@code -Dgolden.update=true} rewrites the file. */
public final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/golden");

    private Golden() {}

    public static void assertMatches(String name, String actual) throws IOException {
        Path file = FOLDER.resolve(name);
        if (Boolean.getBoolean("golden.update")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, actual);
        }
        assertThat(file).as("golden file; create it with -Dgolden.update=true").exists();
        assertThat(actual).as(name).isEqualToNormalizingNewlines(Files.readString(file));
    }
}
