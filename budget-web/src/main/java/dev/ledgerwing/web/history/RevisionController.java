package dev.ledgerwing.web.history;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One revision: what it did, and its build file. */
@Controller
@RequestMapping("/airframes/{code}/history/{number}")
class RevisionController {

    private final Readings readings;
    private final TitleBlocks titleBlocks;
    private final RevisionPages pages;

    RevisionController(Readings readings, TitleBlocks titleBlocks, RevisionPages pages) {
        this.readings = readings;
        this.titleBlocks = titleBlocks;
        this.pages = pages;
    }

    /** @param start the first edit to be shown, counted from 0 */
    @GetMapping
    String show(
            @PathVariable String code,
            @PathVariable int number,
            @RequestParam(defaultValue = "0") int start,
            Figures figures,
            Model model) {
        Snapshot head = readings.head(code);
        model.addAttribute("block", titleBlocks.of(head, AirframePage.HISTORY, figures));
        model.addAttribute("lines", RevisionPages.lines(head.build()));
        model.addAttribute("shown", pages.of(head, new Seen(code, number), start, figures));
        return "history/revision";
    }

    /** The build file, byte for byte as it was stored and its fingerprint taken. */
    @GetMapping("/build.json")
    ResponseEntity<byte[]> download(@PathVariable String code, @PathVariable int number) {
        byte[] document = readings.document(new Seen(code, number));
        ContentDisposition attachment = ContentDisposition.attachment()
                .filename(code + "-r" + number + ".json")
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .header(HttpHeaders.CONTENT_DISPOSITION, attachment.toString())
                .body(document);
    }
}
