package dev.ledgerwing.web.fleet;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildCopy;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.QuantityText;
import dev.ledgerwing.core.quantity.Reading;
import dev.ledgerwing.web.desk.AirframeCodeTaken;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Opens a new airframe: blank, or after the pattern of another one. */
@Controller
@RequestMapping("/airframes/new")
class NewAirframeController {

    private static final String PAGE = "fleet/new";
    private static final String DATUM = "nose tip as first drawn, reference line level";

    private final Desk desk;
    private final Readings readings;

    NewAirframeController(Desk desk, Readings readings) {
        this.desk = desk;
        this.readings = readings;
    }

    @ModelAttribute("stages")
    Map<String, String> stages() {
        Map<String, String> stages = new LinkedHashMap<>();
        for (Stage stage : Stage.values()) {
            stages.put(stage.name(), stage.title());
        }
        return stages;
    }

    @ModelAttribute("patterns")
    Map<String, String> patterns() {
        Map<String, String> patterns = new LinkedHashMap<>();
        patterns.put("", "nothing: blank");
        readings.fleet().forEach(headline -> patterns.put(headline.code(), "the parts of " + headline.name()));
        return patterns;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("form", NewAirframeForm.empty());
        return PAGE;
    }

    @PostMapping
    String open(
            @Valid @ModelAttribute("form") NewAirframeForm form,
            BindingResult problems,
            Member member,
            HttpServletResponse response) {
        Mass target = target(form, member.figures(), problems);
        String code = form.codeOrMade();
        if (!patterns().containsKey(Objects.requireNonNullElse(form.pattern(), ""))) {
            problems.rejectValue("pattern", "gone", "There is no such airframe to start from. Please choose again.");
        }
        if (code.equals("new")) {
            problems.rejectValue("code", "taken", "The code “new” is taken by this page. Please choose another.");
        }
        if (code.isEmpty() && !problems.hasErrors()) {
            problems.rejectValue("code", "needed", "Please give a code: the name has no letters to make one from.");
        }
        if (!problems.hasErrors()) {
            try {
                desk.open(build(form, code, target), new Signature(member.name(), ""));
                return "redirect:/airframes/" + code + "/parts";
            } catch (AirframeCodeTaken taken) {
                problems.rejectValue(
                        "code", "taken", "There is an airframe “" + code + "” already. Please choose another.");
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return PAGE;
    }

    private static @Nullable Mass target(NewAirframeForm form, Figures figures, BindingResult problems) {
        Reading<Mass> reading = QuantityText.mass(
                Objects.requireNonNullElse(form.target(), ""), figures.units().massUnit());
        reading.problem().ifPresent(problem -> problems.rejectValue("target", "unread", "This " + problem + "."));
        Mass target = reading.found();
        if (target != null && (target.mg() <= 0 || target.grams() > 1_000_000)) {
            problems.rejectValue("target", "range", "A target is more than 0 g and at most 1000 kg.");
            return null;
        }
        return target;
    }

    private Build build(NewAirframeForm form, String code, @Nullable Mass target) {
        String datum = form.datum() == null || form.datum().isEmpty() ? DATUM : form.datum();
        Airframe airframe = new Airframe(
                code, Objects.requireNonNull(form.name()), null, Objects.requireNonNull(form.stage()), datum);
        MassBudget budget = new MassBudget(target, null, null, null);
        String pattern = Objects.requireNonNullElse(form.pattern(), "");
        return pattern.isEmpty()
                ? Build.blank(airframe, budget)
                : BuildCopy.of(readings.head(pattern).build(), airframe, budget);
    }
}
