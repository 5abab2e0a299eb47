package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.correction.Correction;
import dev.ledgerwing.core.balance.correction.CorrectionFinder;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.Landings;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.ElementIds;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.team.Member;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Tries a correction: shows all budgets and the drawing before and after it, and applies it. */
@Controller
@RequestMapping("/airframes/{code}/balance/correction")
class CorrectionController {

    private static final String GONE =
            "This correction is no longer on offer: the airframe has changed. Look what is offered now.";

    private final Readings readings;
    private final Desk desk;
    private final Landings landings;
    private final TitleBlocks titleBlocks;
    private final ElementIds ids;

    CorrectionController(Readings readings, Desk desk, Landings landings, TitleBlocks titleBlocks, ElementIds ids) {
        this.readings = readings;
        this.desk = desk;
        this.landings = landings;
        this.titleBlocks = titleBlocks;
        this.ids = ids;
    }

    @GetMapping
    String show(
            @PathVariable String code,
            @RequestParam String key,
            Figures figures,
            Model model,
            RedirectAttributes after) {
        Snapshot head = readings.head(code);
        Optional<Correction> offer = offer(head, key);
        if (offer.isEmpty()) {
            after.addFlashAttribute("problems", List.of(GONE));
            return "redirect:" + AirframePage.BALANCE.address(code);
        }
        model.addAttribute("block", titleBlocks.of(head, AirframePage.BALANCE, figures));
        model.addAttribute("trial", TrialView.of(offer.get(), head.reviewIn(figures)));
        return "balance/correction";
    }

    /** Worked out from the whole record: whatever has landed since makes it stale, and it is offered anew. */
    @PostMapping
    String apply(
            @PathVariable String code,
            @RequestParam String key,
            @RequestParam int seen,
            Member member,
            RedirectAttributes after) {
        Seen base = new Seen(code, seen);
        Optional<Correction> offer = offer(readings.at(base), key);
        if (offer.isEmpty()) {
            after.addFlashAttribute("problems", List.of(GONE));
            return "redirect:" + AirframePage.BALANCE.address(code);
        }
        Correction chosen = offer.get();
        Deed deed = new Deed(
                chosen.sentence(Figures.METRIC),
                Nature.FITTED,
                record -> chosen.on(record, ids.freshLines(record)),
                true);
        Outcome outcome = desk.change(base, deed, new Signature(member.name(), ""));
        if (landings.tell(outcome, base, member.figures(), after)) {
            return "redirect:" + AirframePage.BALANCE.address(code);
        }
        after.addFlashAttribute("problems", Landings.sentences(outcome));
        boolean stillOffered = offer(outcome.head(), key).isPresent();
        after.addAttribute("key", key);
        return stillOffered
                ? "redirect:" + AirframePage.BALANCE.address(code) + "/correction"
                : "redirect:" + AirframePage.BALANCE.address(code);
    }

    private static Optional<Correction> offer(Snapshot shown, String key) {
        return CorrectionFinder.of(shown.review().balance()).offer(key);
    }
}
