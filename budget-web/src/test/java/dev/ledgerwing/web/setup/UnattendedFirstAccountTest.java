package dev.ledgerwing.web.setup;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.ConfigurationPropertySources;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.env.StandardEnvironment;
import org.springframework.core.env.SystemEnvironmentPropertySource;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

@PageTest
@TestPropertySource(properties = {"ledgerwing.first.member=Mara", "ledgerwing.first.passphrase=peat bog at dawn"})
@DirtiesContext
class UnattendedFirstAccountTest {

    @LocalServerPort
    int port;

    @Test
    void existsFromTheStart() {
        Browser browser = new Browser(port);
        Page form = browser.open("/welcome");
        assertThat(form.path()).isEqualTo("/sign-in");
        Page in = browser.send(form, "/sign-in", Map.of("name", "Mara", "passphrase", "peat bog at dawn"));
        assertThat(in.document().expectFirst(".top-bar .person").text()).isEqualTo("Mara");
    }

    @Test
    void isReadFromEnvironmentVariables() {
        Map<String, Object> variables =
                Map.of("LEDGERWING_FIRST_MEMBER", "Mara", "LEDGERWING_FIRST_PASSPHRASE", "peat bog at dawn");
        var environment = new SystemEnvironmentPropertySource(
                StandardEnvironment.SYSTEM_ENVIRONMENT_PROPERTY_SOURCE_NAME, variables);
        UnattendedSettings settings = new Binder(ConfigurationPropertySources.from(environment))
                .bind("ledgerwing.first", UnattendedSettings.class)
                .get();
        assertThat(settings).isEqualTo(new UnattendedSettings("Mara", "peat bog at dawn"));
    }
}
