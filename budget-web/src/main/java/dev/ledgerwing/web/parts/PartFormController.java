package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.ImpactStrip;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DataBinder;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Adds, edits, moves and removes parts, in the table itself; every form works as a plain page too. */
@Controller
@RequestMapping("/airframes/{code}/parts")
class PartFormController {

    private static final String IN_PLACE = "HX-Request";

    private final Readings readings;
    private final PartsPage page;
    private final PartChanges changes;

    PartFormController(Readings readings, PartsPage page, PartChanges changes) {
        this.readings = readings;
        this.page = page;
        this.changes = changes;
    }

    @GetMapping("/new")
    String showNew(
            @PathVariable String code,
            @RequestParam(defaultValue = "") String assembly,
            @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace,
            Figures figures,
            Model model) {
        Snapshot head = readings.head(code);
        model.addAttribute("form", PartForm.empty(head.revision().number(), assemblyFor(head, assembly), figures));
        page.showForm(head, null, figures, model);
        return PartsPage.view(inPlace);
    }

    private static String assemblyFor(Snapshot head, String wanted) {
        boolean isThere = head.build().assembly(wanted).isPresent();
        return isThere || head.build().assemblies().isEmpty()
                ? wanted
                : head.build().assemblies().get(0).code();
    }

    @GetMapping("/{id}")
    String showEdit(
            @PathVariable String code,
            @PathVariable String id,
            @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace,
            Figures figures,
            Model model) {
        Snapshot head = readings.head(code);
        PartLine line = head.build().line(id).orElseThrow(() -> noSuchPart(id));
        model.addAttribute("form", PartForm.of(head.revision().number(), line, figures));
        page.showForm(head, id, figures, model);
        return PartsPage.view(inPlace);
    }

    @PostMapping
    String add(
            @PathVariable String code,
            @Valid @ModelAttribute("form") PartForm form,
            BindingResult problems,
            @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Snapshot seen = seen(code, form);
        PartChanges.Result result = changes.add(seen, form, problems, member);
        return answer(new Asked(code, null, inPlace), result, member.figures(), model, after, response);
    }

    @PostMapping("/{id}")
    String edit(
            @PathVariable String code,
            @PathVariable String id,
            @Valid @ModelAttribute("form") PartForm form,
            BindingResult problems,
            @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Snapshot seen = seen(code, form);
        PartLine before = seen.build().line(id).orElseThrow(() -> noSuchPart(id));
        PartChanges.Result result = changes.edit(seen, before, form, problems, member);
        boolean isClash = result.strip() == null
                && result.stand().revision().number() != seen.revision().number();
        if (isClash) {
            showOnTopOfTheirs(before, form, problems, result.stand(), model);
        }
        return answer(new Asked(code, id, inPlace), result, member.figures(), model, after, response);
    }

    @PostMapping("/{id}/remove")
    String remove(
            @PathVariable String code,
            @PathVariable String id,
            @RequestParam int seen,
            @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace,
            Member member,
            Model model,
            RedirectAttributes after) {
        Snapshot base = readings.at(new Seen(code, seen));
        PartLine line = base.build().line(id).orElseThrow(() -> noSuchPart(id));
        List<String> sentences = new ArrayList<>();
        Optional<ImpactStrip> strip = changes.remove(base, line, member, sentences);
        if (inPlace) {
            strip.ifPresent(done -> model.addAttribute("strip", done));
            model.addAttribute("problems", sentences);
            page.show(readings.head(code), PartsPage.Window.ALL, member.figures(), model);
            return PartsPage.view(true);
        }
        strip.ifPresent(done -> after.addFlashAttribute("strip", done));
        after.addFlashAttribute("problems", sentences);
        return "redirect:/airframes/" + code + "/parts";
    }

    /** Keeps what was typed and takes over what others stored in the other fields, so that saving again undoes none of it. */
    private static void showOnTopOfTheirs(
            PartLine before, PartForm form, BindingResult problems, Snapshot head, Model model) {
        Figures figures = new Figures(Objects.requireNonNull(form.units()));
        int number = head.revision().number();
        PartForm again = head.build()
                .line(before.id())
                .map(theirs -> form.onTopOf(PartForm.of(number, before, figures), PartForm.of(number, theirs, figures)))
                .orElse(form);
        BindingResult shown = new DataBinder(again, "form").getBindingResult();
        problems.getGlobalErrors().forEach(shown::addError);
        model.addAttribute("form", again);
        model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", shown);
    }

    /** What a form was sent for: a part of an airframe (a new one without id), as a page or in place. */
    private record Asked(String code, @Nullable String id, boolean inPlace) {}

    private String answer(
            Asked asked,
            PartChanges.Result result,
            Figures figures,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Snapshot stand = result.stand();
        if (result.strip() == null) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            page.showForm(stand, asked.id(), figures, model);
            return PartsPage.view(asked.inPlace());
        }
        if (asked.inPlace()) {
            model.addAttribute("strip", result.strip());
            int at = asked.id() == null ? 0 : PartsView.placeOf(stand, asked.id());
            page.show(stand, new PartsPage.Window("", at), figures, model);
            return PartsPage.view(true);
        }
        after.addFlashAttribute("strip", result.strip());
        return "redirect:/airframes/" + asked.code() + "/parts";
    }

    private Snapshot seen(String code, PartForm form) {
        Integer number = form.seen();
        if (number == null || !form.isWhole()) {
            throw new Refusal(
                    HttpStatus.BAD_REQUEST, "The page was incomplete, so nothing was changed. Load it again.");
        }
        return readings.at(new Seen(code, number));
    }

    private static Refusal noSuchPart(String id) {
        return Refusal.notFound("There is no part “" + id + "” in this airframe. It may have been removed.");
    }
}
