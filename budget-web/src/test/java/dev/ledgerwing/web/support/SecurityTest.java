package dev.ledgerwing.web.support;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.ledgerwing.web.team.Members;
import dev.ledgerwing.web.team.TestMember;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;

@PageTest
@Import(SampleController.class)
class SecurityTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    Members members;

    @BeforeEach
    void haveAnAccount() {
        TestMember.exist(members);
    }

    @Test
    void allowsPagesNothingButOurOwnFiles() throws Exception {
        mvc.perform(get("/sample").with(TestMember.mara()))
                .andExpect(status().isOk())
                .andExpect(header().string(
                                "Content-Security-Policy",
                                "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                                        + " connect-src 'self'; font-src 'self'; form-action 'self'; base-uri 'none';"
                                        + " frame-ancestors 'none'"))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Referrer-Policy", "same-origin"))
                .andExpect(header().string("Cache-Control", Matchers.containsString("no-store")));
    }

    @Test
    void leadsWhoeverIsNotSignedInToTheSignIn() throws Exception {
        mvc.perform(get("/sample")).andExpect(status().isFound()).andExpect(redirectedUrl("/sign-in"));
    }

    @Test
    void tellsHtmxToLeaveThePageOnceTheSessionHasEnded() throws Exception {
        mvc.perform(get("/sample").header("HX-Request", "true"))
                .andExpect(status().isUnauthorized())
                .andExpect(header().string("HX-Redirect", "/sign-in"))
                .andExpect(content().string(""));
        mvc.perform(post("/sample").header("HX-Request", "true"))
                .andExpect(status().isUnauthorized())
                .andExpect(header().string("HX-Redirect", "/sign-in?ended"));
    }

    @Test
    void refusesAPostThatDoesNotComeFromOurPages() throws Exception {
        mvc.perform(post("/sample").param("name", "Spar").with(TestMember.mara()))
                .andExpect(status().isForbidden());
        mvc.perform(post("/sample")
                        .param("name", "Spar")
                        .with(TestMember.mara())
                        .with(csrf()))
                .andExpect(redirectedUrl("/sample"));
        mvc.perform(post("/sample")
                        .param("name", "Spar")
                        .with(TestMember.mara())
                        .with(csrf().asHeader()))
                .andExpect(redirectedUrl("/sample"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "LOCALHOST:8080", "127.0.0.1:8080", "[::1]:8080"})
    void answersToTheNamesOfTheMachine(String host) throws Exception {
        mvc.perform(get("/sign-in").header("Host", host)).andExpect(status().isOk());
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "localhost.evil.example:8080", "10.0.0.7", "127.0.0.1.evil.example"})
    void answersToNoOtherName(String host) throws Exception {
        mvc.perform(get("/sign-in").header("Host", host))
                .andExpect(status().isBadRequest())
                .andExpect(content().contentTypeCompatibleWith("text/plain"))
                .andExpect(content().string(Matchers.containsString("ledgerwing.hosts")));
    }

    @Test
    void servesStylesAndScriptsToAnybodyForLong() throws Exception {
        mvc.perform(get("/css/ledgerwing.css"))
                .andExpect(status().isOk())
                .andExpect(header().string("Cache-Control", "max-age=31536000"));
        mvc.perform(get("/webjars/htmx.org/dist/htmx.min.js")).andExpect(status().isOk());
    }
}
