package dev.ledgerwing.web.mass;

import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Sets target, ceiling, reserve and stage. */
@Controller
@RequestMapping("/airframes/{code}/mass/budget")
class BudgetController {

    private static final String FORM = "form";

    private final BudgetChanges changes;
    private final MassPage page;

    BudgetController(BudgetChanges changes, MassPage page) {
        this.changes = changes;
        this.page = page;
    }

    @PostMapping(headers = "!" + MassController.IN_PLACE)
    String set(
            @PathVariable String code,
            @Valid @ModelAttribute(FORM) BudgetForm form,
            BindingResult problems,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        BudgetChanges.Result result = changes.set(code, form, problems, member);
        if (result.strip() == null) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            showAgain(result, problems, member, model);
            return MassPage.view(false);
        }
        after.addFlashAttribute("strip", result.strip());
        return "redirect:" + AirframePage.MASS.address(code);
    }

    @PostMapping(headers = MassController.IN_PLACE)
    String setInPlace(
            @PathVariable String code,
            @Valid @ModelAttribute(FORM) BudgetForm form,
            BindingResult problems,
            Member member,
            Model model,
            HttpServletResponse response) {
        BudgetChanges.Result result = changes.set(code, form, problems, member);
        if (result.strip() == null) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            showAgain(result, problems, member, model);
        } else {
            model.addAttribute("strip", result.strip());
            page.show(result.stand(), member.figures(), model);
        }
        return MassPage.view(true);
    }

    private void showAgain(BudgetChanges.Result result, BindingResult problems, Member member, Model model) {
        if (!problems.hasErrors()) {
            // The desk refused, so the form goes on from the newest revision; the old one's values must not shine
            // through.
            model.asMap().remove(BindingResult.MODEL_KEY_PREFIX + FORM);
            model.addAttribute(FORM, result.form());
            model.addAttribute("problems", result.sentences());
        }
        page.showForm(result.stand(), result.form(), member.figures(), model);
    }
}
