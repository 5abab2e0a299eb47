package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.radio.RadioStart;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import java.util.Arrays;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The radio page, the sets of link and controls that an empty one offers, and taking back what was given up. */
@Controller
@RequestMapping("/airframes/{code}/radio")
class RadioController {

    private final Readings readings;
    private final RadioPage page;
    private final Forms forms;

    RadioController(Readings readings, RadioPage page, Forms forms) {
        this.readings = readings;
        this.page = page;
        this.forms = forms;
    }

    @GetMapping
    String show(@PathVariable String code, Figures figures, Model model) {
        return page.show(readings.head(code), figures, model);
    }

    @PostMapping("/starts/{start}")
    String start(
            @PathVariable String code,
            @PathVariable String start,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        RadioStart chosen = Arrays.stream(RadioStart.values())
                .filter(each -> each.code().equals(start))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no ready-made set of this name."));
        return act(Deed.fitting(chosen.title(), chosen::on), new Sent(code, Typed.of(typed), member), after);
    }

    @PostMapping("/given-up/{id}/take-back")
    String takeBack(
            @PathVariable String code,
            @PathVariable String id,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        Build seen = forms.seen(sent);
        NotNeeded given = Elements.find(seen.radio().notNeeded(), id);
        if (given == null) {
            throw Refusal.notFound("This combination is not given up, or no longer.");
        }
        return act(GivenUpRow.takingBack(given, RadioNames.of(seen)), sent, after);
    }

    private String act(Deed deed, Sent sent, RedirectAttributes after) {
        return forms.act(deed, sent, AirframePage.RADIO, after);
    }
}
