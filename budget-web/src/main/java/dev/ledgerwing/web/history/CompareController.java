package dev.ledgerwing.web.history;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.Moments;
import jakarta.servlet.http.HttpServletResponse;
import java.util.OptionalInt;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Any two revisions side by side. */
@Controller
class CompareController {

    private final Readings readings;
    private final TitleBlocks titleBlocks;
    private final Moments moments;

    CompareController(Readings readings, TitleBlocks titleBlocks, Moments moments) {
        this.readings = readings;
        this.titleBlocks = titleBlocks;
        this.moments = moments;
    }

    /** @param start the first edit to be shown, counted from 0 */
    @GetMapping("/airframes/{code}/history/compare")
    String show(
            @PathVariable String code,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(defaultValue = "0") int start,
            Figures figures,
            Model model,
            HttpServletResponse response) {
        Snapshot shown = readings.head(code);
        int head = shown.revision().number();
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.HISTORY, figures));
        model.addAttribute("lines", RevisionPages.lines(shown.build()));
        model.addAttribute("compare", new CompareForm(from, to));
        OptionalInt first = CompareForm.number(from.strip(), head);
        OptionalInt last = CompareForm.number(to.strip(), head);
        if (first.isEmpty() || last.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("wrong", "Please give two revision numbers from 1 to " + head + ".");
        } else {
            compare(new Seen(code, first.getAsInt()), last.getAsInt(), start, figures, model);
        }
        return "history/compare";
    }

    private void compare(Seen from, int to, int start, Figures figures, Model model) {
        Snapshot before = readings.at(from);
        Snapshot after = readings.at(new Seen(from.airframe(), to));
        HistoryView.Writer writer = new HistoryView.Writer(figures, moments);
        model.addAttribute("before", writer.row(before.revision(), null));
        model.addAttribute("after", writer.row(after.revision(), null));
        model.addAttribute(
                "difference",
                new DifferenceView.Between(before, after, figures).told(readings.difference(from, to), start));
    }
}
