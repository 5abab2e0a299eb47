package dev.ledgerwing.web.setup;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;

@PageTest
@DirtiesContext(classMode = DirtiesContext.ClassMode.BEFORE_CLASS)
class FirstAccountTest {

    private static final Map<String, String> MARA =
            Map.of("name", "Mara", "passphrase", "peat bog at dawn", "again", "peat bog at dawn");

    @LocalServerPort
    int port;

    @Test
    void isCreatedOnceAndSignedInAtOnce() {
        Browser other = new Browser(port);
        Page lateForm = other.open("/");

        Browser browser = new Browser(port);
        Page form = browser.open("/");
        String before = browser.sessionCookie();
        Page in = browser.send(form, "/welcome", MARA);
        assertThat(in.path()).isEqualTo("/");
        assertThat(in.document().expectFirst(".top-bar .person").text()).isEqualTo("Mara");
        assertThat(browser.sessionCookie()).isNotEqualTo(before);
        assertThat(browser.open("/welcome").path()).isEqualTo("/");

        Page late = other.send(lateForm, "/welcome", Map.of("name", "Jonas", "passphrase", "short", "again", ""));
        assertThat(late.path()).isEqualTo("/sign-in");
        assertThat(late.text()).contains("The first account exists already: somebody else was faster.");
        assertThat(other.open("/").path()).isEqualTo("/sign-in");
    }
}
