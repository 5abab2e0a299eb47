package dev.ledgerwing.web.setup;

import dev.ledgerwing.web.team.Members;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.csrf.CsrfFilter;

@Configuration(proxyBeanMethods = false)
class SetupConfiguration {

    /** Inside the security chain, so that the redirect too carries the security headers. */
    @Bean
    Customizer<HttpSecurity> firstVisit(Members members) {
        return http -> http.addFilterBefore(new FirstVisitFilter(members), CsrfFilter.class);
    }
}
