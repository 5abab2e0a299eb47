package dev.ledgerwing.web.setup;

import dev.ledgerwing.web.team.Members;
import dev.ledgerwing.web.team.NewMember;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The page of the first visit. Once an account exists there is no such page any more. */
@Controller
@RequestMapping("/welcome")
class WelcomeController {

    private static final String PAGE = "setup/welcome";

    private final Members members;
    private final OneTimeKey key;

    WelcomeController(Members members, OneTimeKey key) {
        this.members = members;
        this.key = key;
    }

    @ModelAttribute("keyNeeded")
    boolean keyNeeded() {
        return key.needed();
    }

    @GetMapping
    String show(@ModelAttribute("form") FirstAccountForm form) {
        return members.anyone() ? "redirect:/" : PAGE;
    }

    @PostMapping
    String create(
            @Valid @ModelAttribute("form") FirstAccountForm form,
            BindingResult problems,
            RedirectAttributes after,
            HttpServletRequest request,
            HttpServletResponse response)
            throws ServletException {
        if (members.anyone()) {
            return tooLate(after);
        }
        check(form, problems);
        if (problems.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return PAGE;
        }
        NewMember newcomer = form.newMember();
        return members.addFirst(newcomer).isPresent() ? signIn(newcomer, request) : tooLate(after);
    }

    private static String signIn(NewMember newcomer, HttpServletRequest request) throws ServletException {
        // The session of before signing in may be known to somebody else.
        request.getSession();
        request.changeSessionId();
        request.login(newcomer.name(), newcomer.passphrase());
        return "redirect:/";
    }

    private static String tooLate(RedirectAttributes after) {
        after.addFlashAttribute("notice", "The first account exists already: somebody else was faster.");
        return "redirect:/sign-in";
    }

    private void check(FirstAccountForm form, BindingResult problems) {
        if (!problems.hasFieldErrors("passphrase") && !form.typedTwice()) {
            problems.rejectValue("again", "differs", "This differs from the passphrase above. Please type both again.");
        }
        if (!key.opens(form.key())) {
            problems.rejectValue("key", "wrong", "This is not the key that the server printed when it started.");
        }
    }
}
