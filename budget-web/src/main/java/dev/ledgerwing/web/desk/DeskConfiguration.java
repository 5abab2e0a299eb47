package dev.ledgerwing.web.desk;

import jakarta.persistence.EntityManagerFactory;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.orm.jpa.JpaTransactionManager;

/** What the embedded database needs so that a killed process loses and damages nothing. */
@Configuration(proxyBeanMethods = false)
class DeskConfiguration {

    private static final Logger LOG = LoggerFactory.getLogger(DeskConfiguration.class);

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
    AutoCloseable compactOnStop(DataSource dataSource) {
        return () -> {
            if (isEmbedded(dataSource)) {
                try (Connection connection = dataSource.getConnection();
                        Statement statement = connection.createStatement()) {
                    statement.execute("SHUTDOWN COMPACT");
                } catch (SQLException alreadyClosed) {
                    LOG.debug("the database was closed already", alreadyClosed);
                }
            }
        };
    }

    private static boolean isEmbedded(DataSource dataSource) throws SQLException {
        try (Connection connection = dataSource.getConnection()) {
            return connection.getMetaData().getDatabaseProductName().equals("H2");
        }
    }
}
