package dev.ledgerwing.web.desk;

import com.zaxxer.hikari.HikariDataSource;
import jakarta.persistence.EntityManagerFactory;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.orm.jpa.JpaTransactionManager;

/** What the embedded database needs so that a killed process loses and damages nothing. */
@Configuration(proxyBeanMethods = false)
class DeskConfiguration {

    @Bean
    JpaTransactionManager transactionManager(EntityManagerFactory entityManagerFactory, DataSource dataSource)
            throws SQLException {
        return isEmbedded(dataSource)
                ? new OneWriterTransactionManager(entityManagerFactory)
                : new JpaTransactionManager(entityManagerFactory);
    }

    /** Closes the embedded database in good order and gives back the space of old pages. */
    @Bean
    @ConditionalOnProperty(name = "ledgerwing.compact-on-stop", matchIfMissing = true)
    AutoCloseable compactOnStop(HikariDataSource dataSource) {
        return () -> {
            if (isEmbedded(dataSource)) {
                Connection last = dataSource.getConnection();
                try (Statement statement = last.createStatement()) {
                    statement.execute("SHUTDOWN COMPACT");
                }
                // handing it back to the pool would speak to a database that is closed
                dataSource.evictConnection(last);
            }
        };
    }

    private static boolean isEmbedded(DataSource dataSource) throws SQLException {
        try (Connection connection = dataSource.getConnection()) {
            return connection.getMetaData().getDatabaseProductName().equals("H2");
        }
    }
}
