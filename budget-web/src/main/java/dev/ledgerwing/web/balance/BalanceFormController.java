package dev.ledgerwing.web.balance;

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

/** Geometry, limits, load cases, bays and rules: each a form of its own below the balance page. */
@Controller
@RequestMapping("/airframes/{code}/balance")
class BalanceFormController {

    private final Readings readings;
    private final Forms forms;
    private final BalanceForms which;

    BalanceFormController(Readings readings, Forms forms, BalanceForms which) {
        this.readings = readings;
        this.forms = forms;
        this.which = which;
    }

    @GetMapping("/{form}")
    String show(@PathVariable String code, @PathVariable String form, Figures figures, Model model) {
        return forms.show(which.named(form), readings.head(code), figures, model);
    }

    @GetMapping("/{kind}/{id}")
    String showElement(
            @PathVariable String code,
            @PathVariable String kind,
            @PathVariable String id,
            Figures figures,
            Model model) {
        BalanceForm form = which.of(kind, id);
        Snapshot head = readings.head(code);
        which.mustBeThere(head.build(), kind, id);
        return forms.show(form, head, figures, model);
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
        return forms.take(
                which.named(form), new Sent(code, Typed.of(typed), member), new Answering(model, after, response));
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
        return forms.take(
                which.of(kind, id), new Sent(code, Typed.of(typed), member), new Answering(model, after, response));
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
        return forms.act(which.removal(forms.seen(sent), kind, id), sent, AirframePage.BALANCE, after);
    }
}
