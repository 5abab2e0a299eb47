package dev.ledgerwing.web.support;

import java.util.List;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What the person who runs the server decides.
 *
 * @param hosts names besides those of the machine itself by which browsers may reach the server
 */
@ConfigurationProperties("ledgerwing")
record ServerSettings(@DefaultValue List<String> hosts) {}
