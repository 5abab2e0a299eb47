package dev.ledgerwing.web.support;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A page that uses everything the frame offers, and some that fail. */
@TestComponent
@Controller
@RequestMapping("/sample")
public class SampleController {

    record SampleForm(
            @NotBlank(message = "Please name the part.")
            @Size(max = 20, message = "At most {max} characters.")
            @PlainText
            @Nullable
            String name,

            @Nullable String mass,

            @Nullable String basis,

            @Nullable String note) {}

    @ModelAttribute
    void choices(Model model) {
        Map<String, String> bases = new LinkedHashMap<>();
        bases.put("GUESSED", "guessed");
        bases.put("WEIGHED", "weighed");
        model.addAttribute("bases", bases);
        model.addAttribute("verdicts", Verdict.values());
    }

    @GetMapping
    String show(@ModelAttribute("form") SampleForm form) {
        return "sample";
    }

    @PostMapping
    String add(
            @Valid @ModelAttribute("form") SampleForm form,
            BindingResult problems,
            RedirectAttributes after,
            HttpServletResponse response) {
        if ("feather".equals(form.mass())) {
            problems.reject("odd", "A feather is no mass.");
        }
        if (problems.hasErrors()) {
            response.setStatus(422);
            return "sample";
        }
        after.addFlashAttribute("notice", "Added " + form.name() + ".");
        return "redirect:/sample";
    }

    @GetMapping("/mass")
    @ResponseBody
    String mass(Member member, Figures figures) {
        return member.name() + " reads " + figures.mass(Mass.ofGrams(1000));
    }

    @PostMapping("/file")
    @ResponseBody
    String file(@RequestParam MultipartFile file) {
        return file.getSize() + " bytes";
    }

    @GetMapping("/missing")
    String missing() {
        throw Refusal.notFound("There is no airframe “heron”.");
    }

    @GetMapping("/clash")
    String clash() {
        throw new CannotAcquireLockException("secret detail");
    }

    @GetMapping("/fault")
    String fault() {
        throw new IllegalArgumentException("secret detail");
    }
}
