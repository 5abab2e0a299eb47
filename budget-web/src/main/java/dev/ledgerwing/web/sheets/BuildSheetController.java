package dev.ledgerwing.web.sheets;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.sheet.BuildSheet;
import dev.ledgerwing.report.sheet.PageStyles;
import dev.ledgerwing.report.sheet.PaperFiles;
import dev.ledgerwing.report.sheet.SheetHead;
import dev.ledgerwing.report.sheet.SheetPicture;
import dev.ledgerwing.report.sheet.SheetRenderer;
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
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.resource.ResourceUrlProvider;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The build sheet of one revision: a page to print, a PDF to keep, and a small picture of it. */
@Controller
@RequestMapping("/airframes/{code}/sheets/{number}")
class BuildSheetController {

    private final Readings readings;
    private final SheetRenderer renderer;
    private final ResourceUrlProvider addresses;
    private final Clock clock;

    BuildSheetController(Readings readings, SheetRenderer renderer, ResourceUrlProvider addresses, Clock clock) {
        this.readings = readings;
        this.renderer = renderer;
        this.addresses = addresses;
        this.clock = clock;
    }

    @GetMapping("/build.html")
    ResponseEntity<String> page(@PathVariable String code, @PathVariable int number, Figures figures) {
        return ResponseEntity.ok()
                .contentType(new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8))
                .body(renderer.html(sheet(code, number, figures), PageStyles.at(this::paper)));
    }

    /** Browsers keep our files for long, so their addresses change with their content. */
    private String paper(String path) {
        String plain = "/" + PaperFiles.FOLDER + path;
        return Objects.requireNonNullElse(addresses.getForLookupPath(plain), plain);
    }

    @GetMapping("/build.pdf")
    ResponseEntity<byte[]> pdf(@PathVariable String code, @PathVariable int number, Figures figures) {
        String name = code + "-r" + number + "-build-sheet.pdf";
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline().filename(name).build().toString())
                .body(renderer.pdf(sheet(code, number, figures)));
    }

    /** The first page, small. */
    @GetMapping("/build.png")
    ResponseEntity<byte[]> picture(@PathVariable String code, @PathVariable int number, Figures figures) {
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_PNG)
                .body(SheetPicture.firstPage(renderer.pdf(sheet(code, number, figures))));
    }

    private BuildSheet sheet(String code, int number, Figures figures) {
        Snapshot shown = readings.at(new Seen(code, number));
        String address = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/airframes/{code}/parts")
                .buildAndExpand(code)
                .toUriString();
        SheetHead head = new SheetHead(
                Integer.toString(number),
                LocalDate.ofInstant(shown.revision().moment(), clock.getZone()),
                shown.revision().author(),
                shown.fingerprint(),
                address);
        return BuildSheet.of(BuildReview.of(shown.build(), figures), head);
    }
}
