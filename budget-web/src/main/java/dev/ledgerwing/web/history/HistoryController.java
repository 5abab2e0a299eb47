package dev.ledgerwing.web.history;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.Moments;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The list of revisions. */
@Controller
class HistoryController {

    private final Readings readings;
    private final TitleBlocks titleBlocks;
    private final Moments moments;

    HistoryController(Readings readings, TitleBlocks titleBlocks, Moments moments) {
        this.readings = readings;
        this.titleBlocks = titleBlocks;
        this.moments = moments;
    }

    /** @param upTo the newest revision to be listed */
    @GetMapping("/airframes/{code}/history")
    String show(
            @PathVariable String code,
            @RequestParam(defaultValue = "" + Integer.MAX_VALUE) int upTo,
            Figures figures,
            Model model) {
        Snapshot shown = readings.head(code);
        int head = shown.revision().number();
        int newest = Math.max(1, Math.min(upTo, head));
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.HISTORY, figures));
        model.addAttribute(
                "history",
                HistoryView.of(
                        readings.historyFrom(new Seen(code, newest), HistoryView.PAGE + 1),
                        newest,
                        head,
                        new HistoryView.Writer(figures, moments)));
        model.addAttribute("compare", CompareForm.ofNewest(head));
        return "history/show";
    }
}
