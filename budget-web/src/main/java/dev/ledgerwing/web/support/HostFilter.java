package dev.ledgerwing.web.support;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers only to names the server knows as its own. A page on some other site could point its own name at this machine and
 * read the answers in the visitor's browser (DNS rebinding); its requests still carry that foreign name and end here.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class HostFilter extends OncePerRequestFilter {

    private static final Set<String> OF_THE_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]", "[0:0:0:0:0:0:0:1]");

    private final Set<String> known;

    HostFilter(ServerSettings settings) {
        known = Stream.concat(OF_THE_MACHINE.stream(), settings.hosts().stream().map(HostFilter::plain))
                .collect(Collectors.toUnmodifiableSet());
    }

    private static String plain(String host) {
        return host.strip().toLowerCase(Locale.ROOT);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (known.contains(plain(request.getServerName()))) {
            chain.doFilter(request, response);
            return;
        }
        response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        response.setContentType(MediaType.TEXT_PLAIN_VALUE);
        response.setCharacterEncoding("UTF-8");
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("Cache-Control", "no-store");
        response.getWriter()
                .println("This server does not answer to the name in the address. Use localhost there,"
                        + " or let whoever runs it add the name to the setting ledgerwing.hosts.");
    }
}
