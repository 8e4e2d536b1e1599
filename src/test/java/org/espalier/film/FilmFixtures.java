package org.espalier.film;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Real films and photos for tests. They are not part of the source: their folder is named by the property {@code
 * espalier.fixtures} or the variable {@code ESPALIER_FIXTURES}, or lies beside the project.
 */
public final class FilmFixtures {

    private FilmFixtures() {}

    /** A file; skips the test, saying why, when there is no such folder. */
    public static Path file(String name) {
        return folder().resolve(name);
    }

    /** All files of a folder, by name; skips likewise. */
    public static List<Path> files(String folder) {
        try (var files = Files.list(folder().resolve(folder))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            return fail(e);
        }
    }

    private static Path folder() {
        var root = Optional.ofNullable(System.getProperty("espalier.fixtures"))
                .or(() -> Optional.ofNullable(System.getenv("ESPALIER_FIXTURES")))
                .orElse("../shared/fixtures");
        var folder = Path.of(root).toAbsolutePath().normalize();
        assumeTrue(
                Files.isDirectory(folder),
                "no films to test with in " + folder + "; name their folder with -Despalier.fixtures=...");
        return folder;
    }
}
