package org.espalier.platform;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** How a backup file is laid out: a zip of tables, films, and last a list of the hashes of all of them. */
final class BackupFile {

    static final String LIST = "SHA256SUMS";

    private static final String SCHEMA = "# schema version ";
    private static final String TABLES = "tables/";
    private static final String FILMS = "films/";
    private static final String COPY = ".copy";
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private BackupFile() {}

    static String schemaLine(String version) {
        return SCHEMA + version;
    }

    static Optional<String> schemaVersion(String line) {
        return line.startsWith(SCHEMA) ? Optional.of(line.substring(SCHEMA.length())) : Optional.empty();
    }

    static String tableEntry(Table table) {
        return TABLES + table.name() + COPY;
    }

    static String filmEntry(Path film) {
        return FILMS + film.getFileName();
    }

    /** The hash a film's entry is named after; empty for any other entry. */
    static Optional<String> filmHash(String entry) {
        return Optional.of(entry)
                .filter(name -> name.startsWith(FILMS))
                .map(name -> name.substring(FILMS.length()))
                .filter(hash -> HASH.matcher(hash).matches());
    }

    static boolean isFilm(Path file) {
        return Files.isRegularFile(file)
                && HASH.matcher(file.getFileName().toString()).matches();
    }
}
