package dev.ledgerwing.web.support;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.savedrequest.HttpSessionRequestCache;

/** Who may see what, and what a browser may do with our pages. */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

    /** Nothing but our own files and addresses: no inline script or style, no foreign host, no frame around us. */
    static final String CONTENT_SECURITY_POLICY = "default-src 'none'; script-src 'self'; style-src 'self';"
            + " img-src 'self' data:; connect-src 'self'; font-src 'self'; form-action 'self'; base-uri 'none';"
            + " frame-ancestors 'none'";

    private static final String[] OPEN_TO_ALL = {
        "/welcome", "/sign-in", "/error", "/favicon.ico", "/css/**", "/icons/**", "/js/**", "/webjars/**"
    };

    @Bean
    SecurityFilterChain pages(HttpSecurity http) {
        var signedOut = new SignedOutAnswer();
        return http.authorizeHttpRequests(
                        requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD)
                                .permitAll()
                                .requestMatchers(OPEN_TO_ALL)
                                .permitAll()
                                .anyRequest()
                                .authenticated())
                .formLogin(form -> form.loginPage(SignedOutAnswer.SIGN_IN)
                        .usernameParameter("name")
                        .passwordParameter("passphrase")
                        .failureForwardUrl(SignedOutAnswer.SIGN_IN + "/refused"))
                .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl(SignedOutAnswer.SIGN_IN + "?out"))
                .exceptionHandling(
                        problems -> problems.authenticationEntryPoint(signedOut).accessDeniedHandler(signedOut))
                .requestCache(cache -> cache.requestCache(pagesOnly()))
                .headers(SecurityConfiguration::restrict)
                .build();
    }

    private static void restrict(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_SECURITY_POLICY));
        headers.referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN));
    }

    /**
     * After signing in one goes back to the page one asked for; a fragment or a post is no place to go back to. No name for a
     * request parameter means that none is added to that page's address.
     */
    @SuppressWarnings("NullAway")
    private static HttpSessionRequestCache pagesOnly() {
        var cache = new HttpSessionRequestCache();
        cache.setMatchingRequestParameterName(null);
        cache.setRequestMatcher(SecurityConfiguration::asksForPage);
        return cache;
    }

    /** Browsers also ask for icons and the like by themselves; only for a page they name HTML among what they accept. */
    private static boolean asksForPage(HttpServletRequest request) {
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        return HttpMethod.GET.matches(request.getMethod())
                && request.getHeader("HX-Request") == null
                && accept != null
                && accept.contains(MediaType.TEXT_HTML_VALUE);
    }
}
