package dev.ledgerwing.core.file;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.InvalidBuild;
import dev.ledgerwing.core.build.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The build file: one record as JSON, strictly checked against the project's JSON Schema. Reading what was written gives the
 * same record exactly; anything that does not fit is named with its place, all of it at once.
 */
public final class BuildFile {

    /** The format this version writes. */
    public static final String FORMAT = "ledgerwing-build/1";

    /** Larger files are refused before they are read, in bytes. */
    public static final int LARGEST_BYTES = 16 * 1024 * 1024;

    private static final String FORMAT_FIELD = "format";

    private BuildFile() {}

    /** Reads a build file in UTF-8. Never throws for what a person wrote. */
    public static BuildReading read(byte[] bytes) {
        if (bytes.length > LARGEST_BYTES) {
            return BuildReading.refused(
                    "",
                    "the file is larger than " + LARGEST_BYTES / (1024 * 1024) + " MB, which no build file should be");
        }
        try {
            return readTree(RecordJson.MAPPER.readTree(bytes));
        } catch (JacksonException unreadable) {
            return BuildReading.refused(place(unreadable), "not readable as JSON: " + plainWords(unreadable));
        }
    }

    private static BuildReading readTree(JsonNode tree) {
        if (!(tree instanceof ObjectNode file)) {
            return BuildReading.refused("", "a build file is one JSON object, this is something else");
        }
        String format = file.path(FORMAT_FIELD).stringValue("");
        if (!format.equals(FORMAT)) {
            return BuildReading.refused(
                    FORMAT_FIELD,
                    format.isEmpty()
                            ? "is missing; this version reads " + FORMAT
                            : "this version reads " + FORMAT + ", was “" + format + "”");
        }
        List<Problem> problems = FileSchema.problemsIn(file);
        return problems.isEmpty() ? BuildBinding.bind(file) : BuildReading.refused(problems);
    }

    /** What the library says, without where it says it from and how it is configured. */
    private static String plainWords(JacksonException unreadable) {
        return unreadable
                .getOriginalMessage()
                .replaceFirst(
                        "(?s)\\s*\\(start marker at \\[Source.*|\\s*at \\[Source.*|\\s*\\(.*DeserializationFeature.*",
                        "");
    }

    private static String place(JacksonException unreadable) {
        TokenStreamLocation location = unreadable.getLocation();
        return location == null || location.getLineNr() < 1
                ? ""
                : "line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    /** The file's bytes, UTF-8, indented, ending in a line break; the same for equal records. */
    public static byte[] write(Build build) {
        ObjectNode file = RecordJson.MAPPER.createObjectNode();
        file.put(FORMAT_FIELD, FORMAT);
        file.setAll((ObjectNode) RecordJson.MAPPER.valueToTree(build));
        BuildBinding.leaveOutEmpty(file);
        String text = RecordJson.MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(file);
        return (text + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Reads a file of which it is known that this project wrote it. */
    public static Build readOwn(byte[] bytes) {
        BuildReading reading = read(bytes);
        return reading.build()
                .orElseThrow(() -> new IllegalStateException("a stored record cannot be read: " + reading.problems()));
    }

    static List<Problem> problemsOf(IllegalArgumentException refused, String place) {
        if (refused instanceof InvalidBuild invalid) {
            return invalid.problems();
        }
        return List.of(new Problem(place, String.valueOf(refused.getMessage())));
    }
}
