package dev.ledgerwing.web.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.Members;
import jakarta.validation.Validator;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;

/** What a server without any account shows; nothing here creates one, and no test before it may have. */
@PageTest
@DirtiesContext(classMode = DirtiesContext.ClassMode.BEFORE_CLASS)
class FirstVisitTest {

    @Autowired
    Members members;

    @Autowired
    OneTimeKey key;

    @Autowired
    Validator validator;

    @LocalServerPort
    int port;

    @ParameterizedTest
    @ValueSource(strings = {"/", "/sign-in", "/airframes/curlew", "/welcome"})
    void everyPageLeadsToTheWelcome(String path) {
        Page page = new Browser(port).open(path);
        assertThat(page.path()).isEqualTo("/welcome");
        assertThat(page.heading()).isEqualTo("Welcome");
        assertThat(page.document().select("#key"))
                .as("nobody else can reach this server")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''     | peat bog at dawn | peat bog at dawn | name       | Please give your name.",
                "Mara   | ''               | ''               | passphrase | Please choose a passphrase. A passphrase has 12 to 128 characters.",
                "Mara   | eleven char      | eleven char      | passphrase | A passphrase has 12 to 128 characters.",
                "Mara   | peat bog at dawn | peat bog at dusk | again      | This differs from the passphrase above. Please type both again.",
            })
    void saysWhatIsWrongWithAField(String name, String passphrase, String again, String field, String sentence) {
        Page page = create(name, passphrase, again);
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.document().select("[aria-invalid=true]").eachAttr("name"))
                .containsExactly(field);
        assertThat(page.document().select("#" + field + "-error p").eachText())
                .containsExactlyInAnyOrder(sentence.split("(?<=\\.) (?=A p)", -1));
        assertThat(page.document().expectFirst("#name").val()).isEqualTo(name);
        assertThat(page.document().select("[type=password]").eachAttr("value")).containsOnly("");
    }

    @Test
    void takesNoNameBeyondSixtyCharacters() {
        Page page = create("n".repeat(61), "peat bog at dawn", "peat bog at dawn");
        assertThat(page.document().expectFirst("#name-error").text()).isEqualTo("A name has at most 60 characters.");
        assertThat(page.document().expectFirst("#name").val()).hasSize(61);
    }

    @Test
    void doesNotStartWithHalfAnAccountFromTheEnvironment() {
        assertRefused(settings("Mara", null), "LEDGERWING_FIRST_PASSPHRASE: Please choose a passphrase.");
        assertRefused(settings(null, "peat bog at dawn"), "LEDGERWING_FIRST_MEMBER: Please give your name.");
        assertRefused(settings("Mara", "short"), "LEDGERWING_FIRST_PASSPHRASE: A passphrase has 12 to 128 characters.");
        assertThat(members.anyone()).isFalse();
    }

    private void assertRefused(UnattendedSettings settings, String sentence) {
        var start = new FirstAccountAtStart(members, settings, key, validator);
        assertThatExceptionOfType(UnusableFirstAccount.class)
                .isThrownBy(start::afterSingletonsInstantiated)
                .withMessage(sentence);
    }

    private static UnattendedSettings settings(@Nullable String member, @Nullable String passphrase) {
        return new UnattendedSettings(member, passphrase);
    }

    private Page create(String name, String passphrase, String again) {
        Browser browser = new Browser(port);
        return browser.send(
                browser.open("/"), "/welcome", Map.of("name", name, "passphrase", passphrase, "again", again));
    }
}
