package org.espalier.platform;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.util.Map;

/**
 * Where the database is, and the password of each role.
 *
 * @param url JDBC URL of the database, without user or password
 */
record DatabaseSettings(String url, Map<DatabaseRole, String> passwords) {

    HikariDataSource pool(DatabaseRole role, int size) {
        var config = new HikariConfig();
        config.setPoolName(role.user());
        config.setJdbcUrl(url);
        config.setUsername(role.user());
        config.setPassword(password(role));
        config.setMaximumPoolSize(size);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(10_000);
        return new HikariDataSource(config);
    }

    String password(DatabaseRole role) {
        var password = passwords.get(role);
        if (password == null) {
            throw new IllegalStateException("No password for the database role " + role.user() + ". Set ESPALIER_DB_"
                    + role.name() + "_PASSWORD_FILE to the file that holds it.");
        }
        return password;
    }

    /** Passwords never reach a log. */
    @Override
    public String toString() {
        return "DatabaseSettings[" + url + "]";
    }
}
