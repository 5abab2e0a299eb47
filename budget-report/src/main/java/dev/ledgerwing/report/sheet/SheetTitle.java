package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Airframe;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The title block: which airframe, which revision of it, and how to find that record again. */
public record SheetTitle(
        String airframe,
        String code,
        String stage,
        String revision,
        String date,
        String author,
        String fingerprint,
        Qr qr,
        String qrCaption) {

    static final String NOT_GIVEN = "not given";

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    static SheetTitle of(Airframe airframe, SheetHead head) {
        String address = head.address();
        return new SheetTitle(
                airframe.name(),
                airframe.code(),
                airframe.stage().title(),
                head.revision(),
                head.date() == null ? NOT_GIVEN : DAY.format(head.date()),
                head.author() == null ? NOT_GIVEN : head.author(),
                Fingerprint.shown(head.fingerprint()),
                Qr.of(address == null ? "sha256:" + head.fingerprint() : address),
                address == null ? "SHA-256 of the record" : "this airframe’s page");
    }
}
