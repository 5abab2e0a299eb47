package dev.ledgerwing.seed;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.file.BuildFile;
import java.nio.charset.StandardCharsets;
import java.time.Instant;

/**
 * One accepted change of a demo airframe: who made it, when and why, and the whole record after it.
 *
 * @param number from 1 without gaps
 * @param fileText the build file as text
 */
public record SeedRevision(int number, String author, Instant moment, String reason, String fileText) {

    /** The build file's bytes, UTF-8. */
    public byte[] buildFile() {
        return fileText.getBytes(StandardCharsets.UTF_8);
    }

    /** The record that the build file holds. */
    public Build build() {
        return BuildFile.readOwn(buildFile());
    }
}
