package org.espalier.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Harms a backup file as a failing disk would. */
final class BackupDamage {

    private BackupDamage() {}

    /** Copies the file with one bit of one film turned. */
    static void changeOneFilm(Path from, Path to) throws IOException {
        try (var in = new ZipFile(from.toFile());
                var out = new ZipOutputStream(Files.newOutputStream(to))) {
            for (var entry : in.stream().toList()) {
                var bytes = in.getInputStream(entry).readAllBytes();
                if (BackupFile.filmHash(entry.getName()).isPresent()) {
                    bytes[0] ^= 1;
                }
                out.putNextEntry(new ZipEntry(entry.getName()));
                out.write(bytes);
                out.closeEntry();
            }
        }
    }
}
