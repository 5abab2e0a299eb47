package dev.ledgerwing.web.team;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.AfterAll;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** The same promises on a real PostgreSQL server, which also shows that the server needs nothing but its address. */
@DirtiesContext
class MembersOnPostgresIT extends MembersContract {

    private static final EmbeddedPostgres SERVER = start();

    private static EmbeddedPostgres start() {
        try {
            return EmbeddedPostgres.start();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @DynamicPropertySource
    static void useTheServer(DynamicPropertyRegistry properties) {
        properties.add("spring.datasource.url", () -> SERVER.getJdbcUrl("postgres", "postgres"));
        properties.add("spring.datasource.username", () -> "postgres");
    }

    @AfterAll
    static void stop() throws IOException {
        SERVER.close();
    }
}
