package dev.ledgerwing.web.support;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.access.AccessDeniedHandlerImpl;
import org.springframework.security.web.csrf.CsrfException;

/**
 * Leads whoever is not, or no longer, signed in to the sign-in page. A request made by htmx is told to leave the page, because
 * the sign-in page would otherwise land in the middle of it.
 */
class SignedOutAnswer implements AuthenticationEntryPoint, AccessDeniedHandler {

    static final String SIGN_IN = "/sign-in";

    private final AccessDeniedHandler forbidden = new AccessDeniedHandlerImpl();

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException reason)
            throws IOException {
        lead(request, response, SIGN_IN);
    }

    /** The token against forged posts lives in the session: without anybody signed in, a missing one means that the session ended. */
    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException reason)
            throws IOException, ServletException {
        if (reason instanceof CsrfException && nobodyIsSignedIn()) {
            lead(request, response, SIGN_IN + "?ended");
        } else {
            forbidden.handle(request, response, reason);
        }
    }

    private static boolean nobodyIsSignedIn() {
        return SecurityContextHolder.getContext().getAuthentication() == null;
    }

    private static void lead(HttpServletRequest request, HttpServletResponse response, String path) throws IOException {
        if (request.getHeader("HX-Request") == null) {
            response.sendRedirect(request.getContextPath() + path);
        } else {
            response.setHeader("HX-Redirect", request.getContextPath() + path);
            response.setStatus(HttpStatus.UNAUTHORIZED.value());
        }
    }
}
