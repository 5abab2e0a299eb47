package dev.ledgerwing.web.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.ledgerwing.web.team.Members;
import jakarta.validation.Validator;
import java.net.InetAddress;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A server that others on the network can reach. */
@SpringBootTest(
        properties = {
            "spring.datasource.url=jdbc:h2:mem:${random.uuid};DB_CLOSE_DELAY=-1",
            "ledgerwing.demo=false",
            "server.address=0.0.0.0"
        })
@AutoConfigureMockMvc
@DirtiesContext
@ExtendWith(OutputCaptureExtension.class)
class OneTimeKeyTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    OneTimeKey key;

    @Autowired
    Members members;

    @Autowired
    Validator validator;

    @Test
    void isNeededForTheFirstAccount() throws Exception {
        Document form = Jsoup.parse(
                mvc.perform(get("/welcome")).andReturn().getResponse().getContentAsString());
        assertThat(form.expectFirst("label[for=key]").text()).isEqualTo("One-time key");

        create("").andExpect(status().isUnprocessableContent());
        create("aaaaa-aaaaa-aaaaa-aaaaa").andExpect(status().isUnprocessableContent());
        assertThat(members.anyone()).isFalse();

        create(key.text().toUpperCase(Locale.ROOT).replace("-", " ")).andExpect(redirectedUrl("/"));
        assertThat(members.anyone()).isTrue();
    }

    @Test
    void isPrintedAtTheStart(CapturedOutput printed) {
        var nobodyYet = mock(Members.class);
        new FirstAccountAtStart(nobodyYet, new UnattendedSettings(null, null), key, validator)
                .afterSingletonsInstantiated();
        assertThat(printed).contains("at /welcome with the one-time key " + key.text());
    }

    private ResultActions create(String typed) throws Exception {
        return mvc.perform(post("/welcome")
                .param("name", "Mara")
                .param("passphrase", "peat bog at dawn")
                .param("again", "peat bog at dawn")
                .param("key", typed)
                .with(csrf()));
    }

    @Test
    void isAnotherAtEveryStart() throws Exception {
        assertThat(keyAt("0.0.0.0").text())
                .matches("([a-z2-9]{5}-){3}[a-z2-9]{5}")
                .isNotEqualTo(keyAt("0.0.0.0").text());
    }

    @Test
    void isNeededUnlessTheServerListensToThisMachineAlone() throws Exception {
        assertThat(keyAt("127.0.0.1").needed()).isFalse();
        assertThat(keyAt("::1").needed()).isFalse();
        assertThat(keyAt("192.168.7.4").needed()).isTrue();
        assertThat(new OneTimeKey(new ServerProperties()).needed()).isTrue();
    }

    private static OneTimeKey keyAt(String address) throws Exception {
        var server = new ServerProperties();
        server.setAddress(InetAddress.getByName(address));
        return new OneTimeKey(server);
    }
}
