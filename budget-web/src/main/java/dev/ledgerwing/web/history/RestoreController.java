package dev.ledgerwing.web.history;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.Landings;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.team.Member;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Goes back to an earlier revision, as a new one: what came since stays in the history. */
@Controller
class RestoreController {

    private static final int LONGEST_TITLE = 200;

    private final Desk desk;
    private final Readings readings;
    private final Landings landings;

    RestoreController(Desk desk, Readings readings, Landings landings) {
        this.desk = desk;
        this.readings = readings;
        this.landings = landings;
    }

    /** @param seen number of the newest revision when the member decided */
    @PostMapping("/airframes/{code}/history/{number}/restore")
    String restore(
            @PathVariable String code,
            @PathVariable int number,
            @RequestParam int seen,
            Member member,
            RedirectAttributes after) {
        Snapshot wanted = readings.at(new Seen(code, number));
        Build build = wanted.build();
        Seen against = new Seen(code, seen);
        Outcome outcome =
                desk.change(against, Deed.fitting(title(wanted), before -> build), new Signature(member.name(), ""));
        if (!landings.tell(outcome, against, member.figures(), after)) {
            after.addFlashAttribute("problems", Landings.sentences(outcome));
        }
        return "redirect:" + AirframePage.HISTORY.address(code);
    }

    private static String title(Snapshot wanted) {
        String title = "Back to revision " + wanted.revision().number() + ": "
                + wanted.revision().title();
        return title.length() <= LONGEST_TITLE ? title : title.substring(0, LONGEST_TITLE - 1) + "…";
    }
}
