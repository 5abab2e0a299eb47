package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.radio.explain.Relaxation;
import dev.ledgerwing.core.radio.explain.Relaxations;
import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import dev.ledgerwing.core.radio.plan.PlanAnswer;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.forms.Answering;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Records what the planner found, or a concession by which it would find something. */
@Controller
@RequestMapping("/airframes/{code}/radio")
class PlanController {

    private final Readings readings;
    private final RadioPage page;
    private final Forms forms;

    PlanController(Readings readings, RadioPage page, Forms forms) {
        this.readings = readings;
        this.page = page;
        this.forms = forms;
    }

    @PostMapping("/plan")
    String plan(
            @PathVariable String code,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        Deed deed = new Deed("Channels planned", Nature.FITTED, PlanController::planned, true);
        return forms.act(deed, new Sent(code, Typed.of(typed), member), AirframePage.RADIO, after);
    }

    private static Build planned(Build build) {
        PlanAnswer answer = ChannelPlanner.plan(ChannelProblem.of(build));
        if (!answer.fits()) {
            throw new IllegalArgumentException("There is no plan that fits, so the channels stay as they are.");
        }
        return build.withChannels(answer.channels());
    }

    /** @param key names the concession among those offered for the revision that was seen */
    @PostMapping("/concessions")
    String concede(
            @PathVariable String code,
            @RequestParam String key,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        Relaxation taken = Relaxations.of(ChannelProblem.of(forms.seen(sent)))
                .byKey(key)
                .orElseThrow(() -> Refusal.notFound("There is no such way to make it fit, or no longer."));
        WhyTyped why = WhyTyped.of(key, sent.typed());
        if (!why.isFine()) {
            new Answering(model, after, response).refused();
            return page.show(readings.at(sent.seen()), member.figures(), why, model);
        }
        Deed deed = Deed.fitting(title(taken), build -> taken.accept(build, member.name(), why.text()));
        return forms.act(deed, sent, AirframePage.RADIO, after);
    }

    /** What is done, without its full stop. */
    private static String title(Relaxation taken) {
        return taken.what().replaceFirst("\\.$", "");
    }
}
