package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.forms.Answering;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
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

/** The link, controls, functions, demands, channels and combinations given up: each a form below the radio page. */
@Controller
@RequestMapping("/airframes/{code}/radio")
class RadioFormController {

    private final Readings readings;
    private final Forms forms;

    RadioFormController(Readings readings, Forms forms) {
        this.readings = readings;
        this.forms = forms;
    }

    @GetMapping("/{form}")
    String show(@PathVariable String code, @PathVariable String form, Member member, Figures figures, Model model) {
        return forms.show(RadioForms.named(form, member), readings.head(code), figures, model);
    }

    /** @param phase the one phase to be shown; all of them where it is none of the record */
    @GetMapping("/demands")
    String showDemands(
            @PathVariable String code,
            @RequestParam(required = false) @Nullable String phase,
            Figures figures,
            Model model) {
        return forms.show(new DemandsForm(phase), readings.head(code), figures, model);
    }

    @PostMapping("/{form}")
    String save(
            @PathVariable String code,
            @PathVariable String form,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        return forms.take(RadioForms.named(form, member), sent, new Answering(model, after, response));
    }
}
