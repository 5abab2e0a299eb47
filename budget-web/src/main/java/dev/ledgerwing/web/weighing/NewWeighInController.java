package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.ElementIds;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.forms.Answering;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Enters a weighing: the readings, what they say against the ledger, and recording it. */
@Controller
@RequestMapping("/airframes/{code}/weigh-ins/new")
class NewWeighInController {

    private final Readings readings;
    private final Forms forms;
    private final ElementIds ids;
    private final Clock clock;

    NewWeighInController(Readings readings, Forms forms, ElementIds ids, Clock clock) {
        this.readings = readings;
        this.forms = forms;
        this.ids = ids;
        this.clock = clock;
    }

    @GetMapping
    String show(@PathVariable String code, Figures figures, Model model) {
        Snapshot head = readings.head(code);
        return forms.show(form(head), head, figures, model);
    }

    @PostMapping
    String take(
            @PathVariable String code,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        return forms.take(form(readings.at(sent.seen())), sent, new Answering(model, after, response));
    }

    private WeighInForm form(Snapshot against) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
        return new WeighInForm(against, ids.next(), today);
    }
}
