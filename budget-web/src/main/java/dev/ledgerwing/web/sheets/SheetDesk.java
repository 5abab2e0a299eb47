package dev.ledgerwing.web.sheets;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.sheet.PageStyles;
import dev.ledgerwing.report.sheet.PaperFiles;
import dev.ledgerwing.report.sheet.SheetHead;
import dev.ledgerwing.report.sheet.SheetPicture;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.resource.ResourceUrlProvider;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** What every sheet needs: the revision it is printed from, with its head, and the answers it is handed out as. */
@Component
class SheetDesk {

    /** One revision, reviewed, with the head of its sheets. */
    record Printed(BuildReview review, SheetHead head) {}

    private final Readings readings;
    private final ResourceUrlProvider addresses;
    private final Clock clock;

    SheetDesk(Readings readings, ResourceUrlProvider addresses, Clock clock) {
        this.readings = readings;
        this.addresses = addresses;
        this.clock = clock;
    }

    /** The revision that was asked for; the code on its sheets leads to {@code page} of the airframe. */
    Printed revision(Seen seen, String page, Figures figures) {
        Snapshot shown = readings.at(seen);
        String address = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/airframes/{code}/" + page)
                .buildAndExpand(seen.airframe())
                .toUriString();
        SheetHead head = new SheetHead(
                Integer.toString(seen.number()),
                LocalDate.ofInstant(shown.revision().moment(), clock.getZone()),
                shown.revision().author(),
                shown.fingerprint(),
                address);
        return new Printed(shown.reviewIn(figures), head);
    }

    PageStyles styles() {
        return PageStyles.at(this::paper);
    }

    /** Browsers keep our files for long, so their addresses change with their content. */
    private String paper(String path) {
        String plain = "/" + PaperFiles.FOLDER + path;
        return Objects.requireNonNullElse(addresses.getForLookupPath(plain), plain);
    }

    static ResponseEntity<String> page(String html) {
        return ResponseEntity.ok()
                .contentType(new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8))
                .body(html);
    }

    static ResponseEntity<byte[]> pdf(byte[] pdf, Seen seen, String kind) {
        String name = seen.airframe() + "-r" + seen.number() + "-" + kind + "-sheet.pdf";
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline().filename(name).build().toString())
                .body(pdf);
    }

    /** The first page, small. */
    static ResponseEntity<byte[]> picture(byte[] pdf) {
        return ResponseEntity.ok().contentType(MediaType.IMAGE_PNG).body(SheetPicture.firstPage(pdf));
    }
}
