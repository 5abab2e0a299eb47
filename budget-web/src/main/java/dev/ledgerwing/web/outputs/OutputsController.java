package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.outputs.BoardSwap;
import dev.ledgerwing.core.outputs.OutputPlan;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.team.Member;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The outputs page, trying and choosing another flight controller, and planning again. */
@Controller
@RequestMapping("/airframes/{code}/outputs")
class OutputsController {

    private final Readings readings;
    private final OutputsPage page;
    private final Forms forms;

    OutputsController(Readings readings, OutputsPage page, Forms forms) {
        this.readings = readings;
        this.page = page;
        this.forms = forms;
    }

    @GetMapping
    String show(@PathVariable String code, Figures figures, Model model) {
        return page.show(readings.head(code), figures, model);
    }

    @GetMapping("/boards/{board}/try")
    String look(@PathVariable String code, @PathVariable String board, Figures figures, Model model) {
        Snapshot head = readings.head(code);
        Board looked = OutputsForms.there(head.build().outputs().boards(), board);
        return page.lookAt(looked.code(), head, figures, model);
    }

    /** Worked out from mass and current as they stand: whatever has landed since makes it stale, and it is asked again. */
    @PostMapping("/boards/{board}/choose")
    String choose(
            @PathVariable String code,
            @PathVariable String board,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        Board chosen = OutputsForms.there(forms.seen(sent).outputs().boards(), board);
        Deed deed = new Deed(
                "Flight controller chosen: " + chosen.name(),
                Nature.FITTED,
                build -> BoardSwap.apply(build, chosen.code()),
                true);
        return forms.act(deed, sent, AirframePage.OUTPUTS, after);
    }

    /** Worked out from all outputs together, so that whatever has landed since makes it stale. */
    @PostMapping("/plan")
    String plan(
            @PathVariable String code,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        Deed deed = new Deed("Outputs planned again", Nature.FITTED, OutputPlan::apply, true);
        return forms.act(deed, new Sent(code, Typed.of(typed), member), AirframePage.OUTPUTS, after);
    }
}
