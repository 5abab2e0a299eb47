package dev.ledgerwing.web.support;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestMapping;

/** The one page for everything that went wrong: the layout as always, plain words, never the text of an exception. */
@Controller
class ErrorPageController implements ErrorController {

    static final String SENTENCE = "ledgerwing.refusal";

    @RequestMapping(path = "/error", headers = "!HX-Request")
    String show(
            @RequestAttribute(name = RequestDispatcher.ERROR_STATUS_CODE, required = false) @Nullable Integer status,
            @RequestAttribute(name = SENTENCE, required = false) @Nullable String sentence,
            Model model,
            HttpServletResponse response) {
        describe(status, sentence, model, response);
        return "error/show";
    }

    /** An edit in place failed: say so in the page's notice and leave the rest, with what was typed, as it is. */
    @RequestMapping(path = "/error", headers = "HX-Request")
    String showInPlace(
            @RequestAttribute(name = RequestDispatcher.ERROR_STATUS_CODE, required = false) @Nullable Integer status,
            @RequestAttribute(name = SENTENCE, required = false) @Nullable String sentence,
            Model model,
            HttpServletResponse response) {
        describe(status, sentence, model, response);
        response.setHeader("HX-Retarget", "#notice");
        response.setHeader("HX-Reswap", "innerHTML");
        return "error/show :: problem";
    }

    private static void describe(
            @Nullable Integer status, @Nullable String sentence, Model model, HttpServletResponse response) {
        // Asked for by its address, without a failure behind it, the page does not exist.
        int code = status == null ? HttpServletResponse.SC_NOT_FOUND : status;
        response.setStatus(code);
        // An address that the firewall turned away has not passed the filter that writes this one.
        response.setHeader("Content-Security-Policy", SecurityConfiguration.CONTENT_SECURITY_POLICY);
        // No page to come back to.
        model.addAttribute("here", "");
        Failure failure = Failure.of(code);
        model.addAttribute("heading", failure.heading());
        model.addAttribute("sentence", sentence == null ? failure.sentence() : sentence);
    }
}
