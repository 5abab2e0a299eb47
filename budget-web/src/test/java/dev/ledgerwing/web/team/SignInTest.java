package dev.ledgerwing.web.team;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.support.SampleController;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

@PageTest
@Import(SampleController.class)
class SignInTest {

    @Autowired
    Members members;

    @LocalServerPort
    int port;

    private Browser browser;

    @BeforeEach
    void haveAnAccount() {
        TestMember.exist(members);
        browser = new Browser(port);
    }

    @Test
    void leadsBackToThePageAskedFor() {
        Page asked = browser.open("/sample?part=L014");
        assertThat(asked.path()).isEqualTo("/sign-in");
        Page there = signIn(asked, "mARA", TestMember.PASSPHRASE);
        assertThat(there.path()).isEqualTo("/sample?part=L014");
        assertThat(there.document().expectFirst(".person").text()).isEqualTo("Mara");
    }

    @Test
    void needsNothingThatOnlyMembersMaySee() {
        Document page = browser.open("/sign-in").document();
        List<String> files = new ArrayList<>(page.select("link[href]").eachAttr("href"));
        files.addAll(page.select("script[src]").eachAttr("src"));
        assertThat(files)
                .hasSizeGreaterThanOrEqualTo(5)
                .allSatisfy(file -> assertThat(browser.picture(file)).isEqualTo(200));
    }

    @Test
    void neverLeadsToWhatABrowserAsksForByItself() {
        Page form = browser.open("/sign-in");
        assertThat(browser.picture("/favicon.ico")).isEqualTo(200);
        assertThat(browser.picture("/apple-touch-icon.png")).isEqualTo(302);
        assertThat(signIn(form, TestMember.NAME, TestMember.PASSPHRASE).path()).isEqualTo("/");
    }

    @Test
    void beginsANewSession() {
        Page form = browser.open("/sign-in");
        String before = browser.sessionCookie();
        signIn(form, TestMember.NAME, TestMember.PASSPHRASE);
        assertThat(browser.sessionCookie()).isNotEmpty().isNotEqualTo(before);
    }

    @Test
    void refusesAWrongPassphraseAndKeepsTheName() {
        Page refused = signIn(browser.open("/sign-in"), TestMember.NAME, "peat bog at dusk");
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.text()).contains("Name and passphrase do not belong together.");
        assertThat(refused.document().expectFirst("#name").val()).isEqualTo("Mara");
        assertThat(refused.document().expectFirst("#passphrase").val()).isEmpty();
        assertThat(browser.open("/sample").path()).isEqualTo("/sign-in");
    }

    @Test
    void saysTheSameOfANameThatDoesNotExist() {
        Page refused = signIn(browser.open("/sign-in"), "Nobody", TestMember.PASSPHRASE);
        assertThat(refused.text()).contains("Name and passphrase do not belong together.");
    }

    @Test
    void takesANameOfAnyLengthForAWrongOne() {
        Page refused = signIn(browser.open("/sign-in"), "x".repeat(100_000), "");
        assertThat(refused.status()).isEqualTo(401);
    }

    @Test
    void asksToWaitAfterFiveAttemptsWithoutSuccess() {
        Page page = browser.open("/sign-in");
        for (int attempt = 0; attempt < 5; attempt++) {
            page = signIn(page, "guesser", "wrong");
            assertThat(page.text()).contains("do not belong together");
        }
        assertThat(signIn(page, "guesser", "wrong").text()).contains("Too many attempts without success. Wait ");
    }

    @Test
    void endsWithSigningOut() {
        Page page = signIn(browser.open("/sample"), TestMember.NAME, TestMember.PASSPHRASE);
        Page out = browser.send(page, "/sign-out", Map.of());
        assertThat(out.path()).isEqualTo("/sign-in?out");
        assertThat(out.text()).contains("You are signed out.");
        assertThat(browser.open("/sample").path()).isEqualTo("/sign-in");
    }

    @Test
    void saysSoWhenTheSessionEndedBeforeAForm() {
        Page page = signIn(browser.open("/sample"), TestMember.NAME, TestMember.PASSPHRASE);
        Page other = new Browser(port).send(page, "/sign-out", Map.of());
        assertThat(other.status()).isEqualTo(200);
        Page late = browser.send(page, "/sample", Map.of("name", "Spar"));
        assertThat(late.path()).isEqualTo("/sign-in?ended");
        assertThat(late.text()).contains("You have been signed out meanwhile.");
    }

    private Page signIn(Page page, String name, String passphrase) {
        return browser.send(page, "/sign-in", Map.of("name", name, "passphrase", passphrase));
    }
}
