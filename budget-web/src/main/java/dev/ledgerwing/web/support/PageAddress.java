package dev.ledgerwing.web.support;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells the layout which page it frames, so that a switch in the top bar leads back to it. */
@ControllerAdvice
class PageAddress {

    @ModelAttribute("here")
    String here(HttpServletRequest request) {
        @Nullable String query = request.getQueryString();
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return query == null ? path : path + "?" + query;
    }
}
