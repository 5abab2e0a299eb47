package dev.ledgerwing.web.support;

import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

@Configuration(proxyBeanMethods = false)
class TimeConfiguration {

    /** Ticks in whole microseconds, which is what the database keeps: a moment read back equals the one written. */
    @Bean
    Clock clock() {
        return Clock.tick(Clock.system(ZoneId.systemDefault()), Duration.of(1, ChronoUnit.MICROS));
    }
}
