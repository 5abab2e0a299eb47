package dev.ledgerwing.web.forms;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Where an answer is put together: the model of a page, or what the page after a redirect is told. */
public record Answering(Model model, RedirectAttributes after, HttpServletResponse response) {

    /** Nothing was changed, the form comes again. */
    public void refused() {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    }
}
