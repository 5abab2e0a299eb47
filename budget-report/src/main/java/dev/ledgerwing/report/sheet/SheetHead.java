package dev.ledgerwing.report.sheet;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which record a sheet was printed from.
 *
 * @param revision its number, or {@value #DRAFT} for a record that is no revision
 * @param date day of the revision; null = not given
 * @param author who made it; null = not given
 * @param fingerprint SHA-256 of the record's bytes, {@link Fingerprint#of}
 * @param address web address of the airframe's page, for the printed code; null = the fingerprint is printed in its place
 */
public record SheetHead(
        String revision,
        @Nullable LocalDate date,
        @Nullable String author,
        String fingerprint,
        @Nullable String address) {

    public static final String DRAFT = "draft";

    /** The head of a sheet printed from a build file alone. */
    public static SheetHead draft(String fingerprint) {
        return new SheetHead(DRAFT, null, null, fingerprint, null);
    }

    public SheetHead withDate(@Nullable LocalDate day) {
        return new SheetHead(revision, day, author, fingerprint, address);
    }
}
