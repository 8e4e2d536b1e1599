package org.espalier.interchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A folder with a clinic's records: the tables, and the films in a folder of their own.
 *
 * @param root where the tables lie
 */
public record ClinicFolder(Path root) {

    /** Where the films lie, seen from the tables. */
    static final String FILMS = "films";

    public ClinicFolder {
        root = root.toAbsolutePath().normalize();
    }

    /** What is in a table; empty when the folder does not have it. */
    Optional<byte[]> table(ClinicFile file) throws IOException {
        var path = root.resolve(file.fileName());
        return Files.isRegularFile(path) ? Optional.of(Files.readAllBytes(path)) : Optional.empty();
    }

    /** The file of a film by its name in the table; empty when it is not there, or lies outside the films. */
    Optional<Path> film(String name) {
        try {
            var films = root.resolve(FILMS);
            var path = root.resolve(name).normalize();
            return path.startsWith(films) && Files.isRegularFile(path) ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
