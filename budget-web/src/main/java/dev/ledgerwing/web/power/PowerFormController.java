package dev.ledgerwing.web.power;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.forms.Answering;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Sources, rails, feeds, loads, duty, phases, rules and the day in the sun: each a form below the power page. */
@Controller
@RequestMapping("/airframes/{code}/power")
class PowerFormController {

    private final Readings readings;
    private final Forms forms;
    private final PowerForms which;

    PowerFormController(Readings readings, Forms forms, PowerForms which) {
        this.readings = readings;
        this.forms = forms;
        this.which = which;
    }

    @GetMapping("/{form}")
    String show(@PathVariable String code, @PathVariable String form, Figures figures, Model model) {
        return forms.show(which.named(form), readings.head(code), figures, model);
    }

    @GetMapping("/sources/new")
    String showNewSource(
            @PathVariable String code,
            @RequestParam(defaultValue = "battery") String kind,
            Figures figures,
            Model model) {
        return forms.show(which.newSource(kind), readings.head(code), figures, model);
    }

    @GetMapping("/{kind}/{id}")
    String showElement(
            @PathVariable String code,
            @PathVariable String kind,
            @PathVariable String id,
            Figures figures,
            Model model) {
        Snapshot head = readings.head(code);
        return forms.show(which.of(kind, id, head.build()), head, figures, model);
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
        return forms.take(which.named(form), sent, new Answering(model, after, response));
    }

    @PostMapping("/sources/new")
    String saveNewSource(
            @PathVariable String code,
            @RequestParam(defaultValue = "battery") String kind,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        return forms.take(which.newSource(kind), sent, new Answering(model, after, response));
    }

    @PostMapping("/{kind}/{id}")
    String saveElement(
            @PathVariable String code,
            @PathVariable String kind,
            @PathVariable String id,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        return forms.take(which.of(kind, id, forms.seen(sent)), sent, new Answering(model, after, response));
    }

    @PostMapping("/day/remove")
    String removeDay(
            @PathVariable String code,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        return forms.act(DayForm.removal(), new Sent(code, Typed.of(typed), member), AirframePage.POWER, after);
    }

    @PostMapping("/{kind}/{id}/remove")
    String remove(
            @PathVariable String code,
            @PathVariable String kind,
            @PathVariable String id,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        return forms.act(which.removal(forms.seen(sent), kind, id), sent, AirframePage.POWER, after);
    }
}
