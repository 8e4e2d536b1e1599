package org.espalier.platform;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Settings of the house.
 *
 * @param data folder that holds films, and the database when it is embedded
 * @param database where the database is
 * @param scanner host and port of the hospital's scanner for malicious files; empty when there is none
 */
@ConfigurationProperties("espalier")
record PlatformProperties(
        Path data,
        @DefaultValue Database database,
        @DefaultValue("") String scanner) {

    DataFolder folder() {
        return new DataFolder(data);
    }

    @Nullable
    FileScanner scannerOrNull() {
        return scanner.isBlank() ? null : new FileScanner(scanner.strip());
    }

    /**
     * @param embedded whether the house runs its own PostgreSQL in the data folder
     * @param durable whether the embedded server waits for the disk; only tests may say no
     * @param url JDBC URL of an external server
     * @param standing whether the house works on the database that stands already, as a command does
     */
    record Database(
            @DefaultValue("false") boolean embedded,
            @DefaultValue("true") boolean durable,
            @Nullable String url,
            @DefaultValue("false") boolean standing) {}
}
