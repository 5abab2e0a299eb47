package dev.ledgerwing.web;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;

/** Starts the server. */
@SpringBootApplication
@ConfigurationPropertiesScan
public class LedgerwingApplication {

    public static void main(String[] arguments) {
        SpringApplication.run(LedgerwingApplication.class, arguments);
    }
}
