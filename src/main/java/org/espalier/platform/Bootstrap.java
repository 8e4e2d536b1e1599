package org.espalier.platform;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.springframework.core.io.ClassPathResource;

/** The first start of an embedded server: roles, database, and a door that asks for passwords. */
final class Bootstrap {

    private static final String PASSWORDS_ONLY = """
            # type  database  user  address  method
            local   all       all            scram-sha-256
            host    all       all   127.0.0.1/32  scram-sha-256
            host    all       all   ::1/128       scram-sha-256
            """;

    private Bootstrap() {}

    static void run(DataSource superuser, String superuserPassword, DatabaseSettings settings, Path cluster)
            throws SQLException, IOException {
        try (var connection = superuser.getConnection()) {
            execute(connection, "create database espalier encoding 'UTF8'");
        }
        try (var connection = databaseOf(superuser).getConnection()) {
            for (var role : DatabaseRole.values()) {
                set(connection, role, settings.password(role));
            }
            execute(connection, rolesScript().replace(":database", "espalier"));
            setSuperuserPassword(connection, superuserPassword);
            Files.writeString(cluster.resolve("pg_hba.conf"), PASSWORDS_ONLY);
            execute(connection, "select pg_reload_conf()");
        }
    }

    private static DataSource databaseOf(DataSource superuser) {
        var source = (PGSimpleDataSource) superuser;
        source.setDatabaseName("espalier");
        return source;
    }

    private static void set(Connection connection, DatabaseRole role, String password) throws SQLException {
        try (var statement = connection.prepareStatement("select set_config(?, ?, false)")) {
            statement.setString(1, "espalier." + role.settingName());
            statement.setString(2, password);
            statement.execute();
        }
    }

    private static void setSuperuserPassword(Connection connection, String password) throws SQLException {
        try (var statement = connection.prepareStatement("select set_config('espalier.superuser', ?, false)")) {
            statement.setString(1, password);
            statement.execute();
        }
        execute(
                connection,
                "do $$ begin execute format('alter role postgres password %L', current_setting('espalier.superuser'));"
                        + " end $$");
    }

    private static void execute(Connection connection, String sql) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static String rolesScript() throws IOException {
        return new ClassPathResource("db/bootstrap/roles.sql").getContentAsString(StandardCharsets.UTF_8);
    }
}
