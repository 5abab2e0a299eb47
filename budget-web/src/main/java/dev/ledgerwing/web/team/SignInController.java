package dev.ledgerwing.web.team;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.WebAttributes;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** The page to sign in with; the check itself is Spring Security's and {@link MemberSignIn}'s. */
@Controller
class SignInController {

    private static final String PAGE = "team/sign-in";

    @GetMapping("/sign-in")
    String show(
            @Nullable Principal signedIn,
            @RequestParam(required = false) @Nullable String ended,
            @RequestParam(required = false) @Nullable String out,
            Model model) {
        if (signedIn != null) {
            return "redirect:/";
        }
        model.addAttribute("news", news(ended, out));
        return PAGE;
    }

    @Nullable
    private static String news(@Nullable String ended, @Nullable String out) {
        if (ended != null) {
            return "You have been signed out meanwhile. Sign in again; what was sent last has not been stored.";
        }
        return out == null ? null : "You are signed out.";
    }

    /** Reached by forward after an attempt that failed. */
    @PostMapping("/sign-in/refused")
    String refused(
            @RequestParam(defaultValue = "") String name,
            @RequestAttribute(WebAttributes.AUTHENTICATION_EXCEPTION) AuthenticationException reason,
            Model model,
            HttpServletResponse response) {
        response.setStatus(HttpStatus.UNAUTHORIZED.value());
        model.addAttribute("name", name);
        model.addAttribute("problem", problem(reason));
        return PAGE;
    }

    private static String problem(AuthenticationException reason) {
        if (reason instanceof TooManyAttempts often) {
            return "Too many attempts without success. Wait " + often.seconds() + " seconds, then try again.";
        }
        return "Name and passphrase do not belong together. Check both and try again.";
    }
}
