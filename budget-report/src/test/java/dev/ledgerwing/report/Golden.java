package dev.ledgerwing.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * Compares text with a file under {@code src/test/resources/golden}; {@code -Dgolden.update=true} rewrites the file. Space at the
 * end of lines, which templates leave and formatters take away, does not count.
 */
public final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/golden");

    private static final Pattern TRAILING_SPACE = Pattern.compile("[ \\t]+$", Pattern.MULTILINE);

    private Golden() {}

    public static void assertMatches(String name, String text) throws IOException {
        String actual = TRAILING_SPACE.matcher(text).replaceAll("");
        Path file = FOLDER.resolve(name);
        if (Boolean.getBoolean("golden.update")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, actual);
        }
        assertThat(file).as("golden file; create it with -Dgolden.update=true").exists();
        assertThat(actual).as(name).isEqualToNormalizingNewlines(Files.readString(file));
    }
}
