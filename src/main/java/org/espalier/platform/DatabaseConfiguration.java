package org.espalier.platform;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.flyway.autoconfigure.FlywayDataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.datasource.lookup.AbstractRoutingDataSource;

/** The database, reached as the owner by migrations alone, and as application or job by everything else. */
@Configuration
@EnableConfigurationProperties(PlatformProperties.class)
class DatabaseConfiguration {

    private static final int APP_CONNECTIONS = 24;
    private static final int JOB_CONNECTIONS = 6;

    @Bean(destroyMethod = "close")
    DatabaseServer databaseServer(PlatformProperties properties) {
        return DatabaseServer.of(properties);
    }

    @Bean
    @FlywayDataSource
    DataSource ownerDataSource(DatabaseServer server) {
        var settings = server.settings();
        return new DriverManagerDataSource(
                settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER));
    }

    @Bean(destroyMethod = "close")
    HikariDataSource appDataSource(DatabaseServer server) {
        return server.settings().pool(DatabaseRole.APP, APP_CONNECTIONS);
    }

    @Bean(destroyMethod = "close")
    HikariDataSource jobDataSource(DatabaseServer server) {
        return server.settings().pool(DatabaseRole.JOB, JOB_CONNECTIONS);
    }

    /** Work for the house itself runs as the job role, everything else as the application's. */
    @Bean
    @Primary
    DataSource dataSource(HikariDataSource appDataSource, HikariDataSource jobDataSource) {
        var routing = new AbstractRoutingDataSource() {
            @Override
            protected @Nullable Object determineCurrentLookupKey() {
                return Callers.current()
                                .filter(Caller.SystemAtSite.class::isInstance)
                                .isPresent()
                        ? DatabaseRole.JOB
                        : DatabaseRole.APP;
            }
        };
        routing.setTargetDataSources(Map.of(DatabaseRole.APP, appDataSource, DatabaseRole.JOB, jobDataSource));
        return routing;
    }

    /** A running server: the embedded one, which stops with the program, or one that is just reached. */
    record DatabaseServer(DatabaseSettings settings, Optional<EmbeddedDatabase> embedded) implements AutoCloseable {

        static DatabaseServer of(PlatformProperties properties) {
            if (properties.database().standing()) {
                var standing = StandingDatabase.of(properties.folder());
                return new DatabaseServer(standing.settings(), standing.started());
            }
            if (properties.database().embedded()) {
                var database = EmbeddedDatabase.start(
                        properties.folder(), properties.database().durable());
                return new DatabaseServer(database.settings(), Optional.of(database));
            }
            var url = properties.database().url();
            if (url == null || url.isBlank()) {
                throw new IllegalStateException("No database: set ESPALIER_DB_URL, or start with --embedded.");
            }
            return new DatabaseServer(new DatabaseSettings(url, Secrets.rolesFromEnvironment()), Optional.empty());
        }

        @Override
        public void close() throws Exception {
            if (embedded.isPresent()) {
                embedded.get().close();
            }
        }
    }
}
