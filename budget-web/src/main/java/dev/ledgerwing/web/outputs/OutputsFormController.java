package dev.ledgerwing.web.outputs;

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

/** Boards, the one aboard, what outputs drive and what parts need: each a form below the outputs page. */
@Controller
@RequestMapping("/airframes/{code}/outputs")
class OutputsFormController {

    private final Readings readings;
    private final Forms forms;

    OutputsFormController(Readings readings, Forms forms) {
        this.readings = readings;
        this.forms = forms;
    }

    @GetMapping("/{form}")
    String show(@PathVariable String code, @PathVariable String form, Figures figures, Model model) {
        return forms.show(OutputsForms.named(form), readings.head(code), figures, model);
    }

    @GetMapping("/assignments/new")
    String showNewOutput(
            @PathVariable String code,
            @RequestParam(required = false) @Nullable String part,
            Figures figures,
            Model model) {
        return forms.show(OutputsForms.newOutput(part), readings.head(code), figures, model);
    }

    @GetMapping("/{kind}/{id}")
    String showElement(
            @PathVariable String code,
            @PathVariable String kind,
            @PathVariable String id,
            Figures figures,
            Model model) {
        Snapshot head = readings.head(code);
        return forms.show(OutputsForms.of(kind, id, head.build()), head, figures, model);
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
        return forms.take(OutputsForms.named(form), sent, new Answering(model, after, response));
    }

    @PostMapping("/assignments/new")
    String saveNewOutput(
            @PathVariable String code,
            @RequestParam(required = false) @Nullable String part,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        return forms.take(OutputsForms.newOutput(part), sent, new Answering(model, after, response));
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
        return forms.take(OutputsForms.sent(kind, id, forms.seen(sent)), sent, new Answering(model, after, response));
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
        return forms.act(OutputsForms.removal(forms.seen(sent), kind, id), sent, AirframePage.OUTPUTS, after);
    }
}
