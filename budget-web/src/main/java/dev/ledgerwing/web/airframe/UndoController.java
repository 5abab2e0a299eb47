package dev.ledgerwing.web.airframe;

import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.team.Member;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Takes a revision back as a new one and leads back to the page it was asked on. */
@Controller
class UndoController {

    private final Desk desk;
    private final Landings landings;

    UndoController(Desk desk, Landings landings) {
        this.desk = desk;
        this.landings = landings;
    }

    @PostMapping("/airframes/{code}/undo")
    String undo(
            @PathVariable String code,
            @RequestParam int number,
            @RequestParam(defaultValue = "PARTS") AirframePage back,
            Member member,
            RedirectAttributes after) {
        Seen undone = new Seen(code, number);
        Outcome outcome = desk.undo(undone, new Signature(member.name(), ""));
        if (!landings.tell(outcome, undone, member.figures(), after)) {
            after.addFlashAttribute("problems", Landings.sentences(outcome));
        }
        return "redirect:" + back.address(code);
    }
}
