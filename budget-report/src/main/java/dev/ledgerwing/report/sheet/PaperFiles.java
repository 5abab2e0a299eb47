package dev.ledgerwing.report.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The style sheets and fonts that go with every page, to be put beside it in a folder called {@value #FOLDER}. */
public final class PaperFiles {

    /** Name of the folder, with its slash. */
    public static final String FOLDER = "paper/";

    /** What a browser needs of them, as paths inside the folder. */
    public static final List<String> FOR_BROWSERS = List.of(
            "sheet.css",
            "screen.css",
            "fonts/Roboto-Regular.ttf",
            "fonts/Roboto-Bold.ttf",
            "fonts/DejaVuSansCondensed-Symbols.ttf",
            "fonts/LICENSE-Roboto.txt",
            "fonts/LICENSE-DejaVu.txt",
            "fonts/README.txt");

    private static final String CLASS_PATH = "META-INF/resources/" + FOLDER;

    private PaperFiles() {}

    /** One of the files by its path inside the folder. */
    public static byte[] bytes(String path) {
        try (InputStream stream = PaperFiles.class.getClassLoader().getResourceAsStream(CLASS_PATH + path)) {
            if (stream == null) {
                throw new IllegalArgumentException("there is no paper file " + path);
            }
            return stream.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
