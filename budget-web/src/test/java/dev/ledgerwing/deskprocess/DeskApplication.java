package dev.ledgerwing.deskprocess;

import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.persistence.autoconfigure.EntityScan;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.data.jpa.repository.config.EnableJpaRepositories;

/** The desk alone. */
@SpringBootConfiguration
@EnableAutoConfiguration
@ComponentScan("dev.ledgerwing.web.desk")
@EntityScan("dev.ledgerwing.web.desk")
@EnableJpaRepositories("dev.ledgerwing.web.desk")
public class DeskApplication {

    @Bean
    Clock clock() {
        return Clock.tick(Clock.system(ZoneOffset.UTC), Duration.ofNanos(1000));
    }
}
