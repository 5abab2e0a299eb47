package dev.ledgerwing.web.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

class HostFilterTest {

    private final HostFilter filter = new HostFilter(new ServerSettings(List.of("ledger.bench", " 10.0.0.7")));

    @Test
    void answersToTheNamesFromTheSettings() throws Exception {
        assertThat(statusFor("ledger.bench")).isEqualTo(200);
        assertThat(statusFor("Ledger.Bench")).isEqualTo(200);
        assertThat(statusFor("10.0.0.7")).isEqualTo(200);
        assertThat(statusFor("localhost")).isEqualTo(200);
    }

    @Test
    void refusesEveryOtherName() throws Exception {
        assertThat(statusFor("bench")).isEqualTo(400);
        assertThat(statusFor("")).isEqualTo(400);
    }

    private int statusFor(String host) throws Exception {
        var request = new MockHttpServletRequest("GET", "/");
        request.setServerName(host);
        var response = new MockHttpServletResponse();
        filter.doFilter(request, response, new MockFilterChain());
        return response.getStatus();
    }
}
