package org.espalier.platform;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** A program that starts the database, has one row acknowledged, and dies at once without any farewell. */
final class KilledHouse {

    private KilledHouse() {}

    public static void main(String[] arguments) throws SQLException {
        var database = EmbeddedDatabase.start(new DataFolder(Path.of(arguments[0])), true);
        try (var connection = connect(database.settings());
                var statement = connection.createStatement()) {
            statement.execute("create table acknowledged (word text)");
            statement.execute("insert into acknowledged values ('kept')");
        }
        Runtime.getRuntime().halt(137);
    }

    static Connection connect(DatabaseSettings settings) throws SQLException {
        return DriverManager.getConnection(
                settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER));
    }
}
