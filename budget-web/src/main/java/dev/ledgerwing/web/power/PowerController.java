package dev.ledgerwing.web.power;

import dev.ledgerwing.core.power.PowerStart;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The power page, and the ready-made supplies that an empty one offers. */
@Controller
@RequestMapping("/airframes/{code}/power")
class PowerController {

    private final Readings readings;
    private final PowerPage page;
    private final Forms forms;

    PowerController(Readings readings, PowerPage page, Forms forms) {
        this.readings = readings;
        this.page = page;
        this.forms = forms;
    }

    /** @param failed what is looked at as failed, by its place in the table; anything else is said to be unknown */
    @GetMapping
    String show(
            @PathVariable String code,
            @RequestParam(required = false) @Nullable String failed,
            Figures figures,
            Model model) {
        return page.show(readings.head(code), failed, figures, model);
    }

    @PostMapping("/starts/{start}")
    String start(
            @PathVariable String code,
            @PathVariable String start,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        PowerStart chosen = Arrays.stream(PowerStart.values())
                .filter(each -> each.code().equals(start))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no ready-made supply of this name."));
        Deed deed = Deed.fitting("Ready-made supply: " + chosen.title(), chosen::on);
        return forms.act(deed, new Sent(code, Typed.of(typed), member), AirframePage.POWER, after);
    }
}
