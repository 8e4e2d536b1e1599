package org.espalier.film.internal.dicom;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Real films for tests. They are not part of the source: the folder is named by the property {@code espalier.fixtures}
 * or the variable {@code ESPALIER_FIXTURES}, or lies beside the project.
 */
final class Fixtures {

    private Fixtures() {}

    /** A file below the {@code dicom} folder; skips the test, saying why, when there is no such folder. */
    static Path file(String name) {
        return folder().resolve(name);
    }

    /** All files of a folder below {@code dicom}, by name; skips likewise. */
    static List<Path> files(String folder) {
        try (Stream<Path> files = Files.list(folder().resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".dcm"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return fail(e);
        }
    }

    private static Path folder() {
        String root = Optional.ofNullable(System.getProperty("espalier.fixtures"))
                .or(() -> Optional.ofNullable(System.getenv("ESPALIER_FIXTURES")))
                .orElse("../shared/fixtures");
        Path folder = Path.of(root, "dicom").toAbsolutePath().normalize();
        assumeTrue(
                Files.isDirectory(folder),
                "no films to test with in " + folder + "; name their folder with -Despalier.fixtures=...");
        return folder;
    }
}
