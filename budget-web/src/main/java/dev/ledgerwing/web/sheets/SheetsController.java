package dev.ledgerwing.web.sheets;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The page that shows which sheets there are. */
@Controller
class SheetsController {

    private final Readings readings;
    private final TitleBlocks titleBlocks;

    SheetsController(Readings readings, TitleBlocks titleBlocks) {
        this.readings = readings;
        this.titleBlocks = titleBlocks;
    }

    @GetMapping("/airframes/{code}/sheets")
    String show(@PathVariable String code, Figures figures, Model model) {
        Snapshot head = readings.head(code);
        model.addAttribute("block", titleBlocks.of(head, AirframePage.SHEETS, figures));
        model.addAttribute("fingerprint", head.shortFingerprint());
        return "sheets-page/show";
    }
}
