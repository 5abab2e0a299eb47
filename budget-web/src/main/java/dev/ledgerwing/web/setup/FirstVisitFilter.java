package dev.ledgerwing.web.setup;

import dev.ledgerwing.web.team.Members;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.web.filter.OncePerRequestFilter;

/** Until the first account exists every page leads to the one that creates it. */
class FirstVisitFilter extends OncePerRequestFilter {

    private static final String WELCOME = "/welcome";

    private final Members members;
    private final RequestMatcher neededThere = new OrRequestMatcher(
            path(WELCOME),
            path("/css/**"),
            path("/js/**"),
            path("/webjars/**"),
            path("/icons/**"),
            path("/favicon.ico"));

    FirstVisitFilter(Members members) {
        this.members = members;
    }

    private static RequestMatcher path(String pattern) {
        return PathPatternRequestMatcher.pathPattern(pattern);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return neededThere.matches(request) || members.anyone();
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.sendRedirect(request.getContextPath() + WELCOME);
    }
}
