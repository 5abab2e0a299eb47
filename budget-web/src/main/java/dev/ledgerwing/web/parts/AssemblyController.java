package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.Landings;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DataBinder;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Renames an assembly, or removes it once it is empty. */
@Controller
@RequestMapping("/airframes/{code}/assemblies/{assembly}")
class AssemblyController {

    private static final String PAGE = "parts/assembly";

    private final Readings readings;
    private final Desk desk;
    private final Landings landings;
    private final TitleBlocks titleBlocks;

    AssemblyController(Readings readings, Desk desk, Landings landings, TitleBlocks titleBlocks) {
        this.readings = readings;
        this.desk = desk;
        this.landings = landings;
        this.titleBlocks = titleBlocks;
    }

    @ModelAttribute("carriers")
    Map<String, String> carriers() {
        Map<String, String> carriers = new LinkedHashMap<>();
        for (MovesWith each : MovesWith.values()) {
            carriers.put(each.name(), "the " + each.name().toLowerCase(Locale.ROOT));
        }
        return carriers;
    }

    @GetMapping
    String show(@PathVariable String code, @PathVariable String assembly, Figures figures, Model model) {
        Snapshot head = readings.head(code);
        model.addAttribute("form", AssemblyForm.of(head.revision().number(), in(head, assembly)));
        return page(head, assembly, figures, model);
    }

    @PostMapping
    String change(
            @PathVariable String code,
            @PathVariable String assembly,
            @Valid @ModelAttribute("form") AssemblyForm form,
            BindingResult problems,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        if (form.seen() == null) {
            throw new Refusal(
                    HttpStatus.BAD_REQUEST, "The page was incomplete, so nothing was changed. Load it again.");
        }
        Seen seen = new Seen(code, form.seen());
        Snapshot base = readings.at(seen);
        Assembly before = in(base, assembly);
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        if (problems.hasErrors()) {
            return page(base, assembly, member.figures(), model);
        }
        Assembly changed =
                new Assembly(assembly, Objects.requireNonNull(form.name()), Objects.requireNonNull(form.movesWith()));
        Deed deed = Deed.fitting("Assembly " + changed.name() + " edited", build -> PartDeeds.changed(build, changed));
        Outcome outcome = desk.change(seen, deed, new Signature(member.name(), ""));
        if (landings.tell(outcome, seen, member.figures(), after)) {
            return "redirect:/airframes/" + code + "/parts";
        }
        Snapshot head = outcome.head();
        AssemblyForm again =
                form.onTopOf(before, in(head, assembly), head.revision().number());
        BindingResult shown = new DataBinder(again, "form").getBindingResult();
        Landings.sentences(outcome).forEach(sentence -> shown.reject("desk", sentence));
        model.addAttribute("form", again);
        model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", shown);
        return page(head, assembly, member.figures(), model);
    }

    @PostMapping("/remove")
    String remove(
            @PathVariable String code,
            @PathVariable String assembly,
            @RequestParam int seen,
            Member member,
            RedirectAttributes after) {
        Seen base = new Seen(code, seen);
        String name = in(readings.at(base), assembly).name();
        Deed deed = Deed.fitting("Assembly " + name + " removed", build -> PartDeeds.removedAssembly(build, assembly));
        Outcome outcome = desk.change(base, deed, new Signature(member.name(), ""));
        if (!landings.tell(outcome, base, member.figures(), after)) {
            List<String> sentences = Landings.sentences(outcome);
            after.addFlashAttribute("problems", sentences);
        }
        return "redirect:/airframes/" + code + "/parts";
    }

    private String page(Snapshot head, String assembly, Figures figures, Model model) {
        Assembly shown = in(head, assembly);
        model.addAttribute("block", titleBlocks.of(head, AirframePage.PARTS, figures));
        model.addAttribute("assembly", shown);
        model.addAttribute("seen", head.revision().number());
        model.addAttribute(
                "holds",
                head.build().lines().stream()
                        .filter(line -> line.assembly().equals(assembly))
                        .count());
        return PAGE;
    }

    private static Assembly in(Snapshot snapshot, String assembly) {
        return snapshot.build()
                .assembly(assembly)
                .orElseThrow(() -> Refusal.notFound("There is no assembly “" + assembly + "” in this airframe."));
    }
}
