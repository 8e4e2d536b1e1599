package org.espalier.interchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipInputStream;
import org.springframework.util.FileSystemUtils;

/**
 * Files that come one by one, or packed, and are a clinic's folder when all are there. Tables are known by their names;
 * what else comes is a film. Nothing of a name but its last part is used, and the whole is limited, so that no file
 * gets outside and none fills the disk.
 */
public final class ArrivingFolder implements AutoCloseable {

    /** The most that is kept of one clinic's folder. */
    public static final long MOST_BYTES = 4L << 30;

    private static final int MOST_FILES = 20_000;
    private static final int PIECE = 1 << 16;
    private static final String PACKED = ".zip";

    private final Path root;
    private final List<String> names = new ArrayList<>();
    private long bytes;

    private ArrivingFolder(Path root) {
        this.root = root;
    }

    public static ArrivingFolder open() throws IOException {
        return new ArrivingFolder(Files.createTempDirectory("espalier-records"));
    }

    /**
     * Takes a file in; of a packed one, every file in it. A later one of the same name stands in place of an earlier.
     *
     * @throws IOException when it is more than is kept, or cannot be unpacked
     */
    public synchronized void add(String name, InputStream content) throws IOException {
        if (name.toLowerCase(Locale.ROOT).endsWith(PACKED)) {
            unpack(content);
        } else {
            keep(name, content);
        }
    }

    private void unpack(InputStream packed) throws IOException {
        var zip = new ZipInputStream(packed);
        for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            if (!entry.isDirectory()) {
                keep(entry.getName(), zip);
            }
        }
    }

    private void keep(String named, InputStream content) throws IOException {
        var name = named.substring(1 + Math.max(named.lastIndexOf('/'), named.lastIndexOf('\\')));
        if (!name.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,199}")) {
            throw new IOException("a file has a name that is not taken: letters, digits, dots and dashes only");
        }
        if (names.size() >= MOST_FILES) {
            throw new IOException("more than " + MOST_FILES + " files");
        }
        var path = isTable(name)
                ? root.resolve(name)
                : root.resolve(ClinicFolder.FILMS).resolve(name);
        Files.createDirectories(Optional.ofNullable(path.getParent()).orElseThrow());
        copy(content, path);
        names.remove(name);
        names.add(name);
    }

    private void copy(InputStream content, Path path) throws IOException {
        var piece = new byte[PIECE];
        try (var file = Files.newOutputStream(path)) {
            for (int read = content.read(piece); read >= 0; read = content.read(piece)) {
                bytes += read;
                if (bytes > MOST_BYTES) {
                    throw new IOException("more than " + MOST_BYTES + " bytes");
                }
                file.write(piece, 0, read);
            }
        }
    }

    private static boolean isTable(String name) {
        return Arrays.stream(ClinicFile.values())
                .anyMatch(file -> file.fileName().equals(name));
    }

    /** The tables that are there, in the order they are taken. */
    public synchronized List<ClinicFile> tables() {
        return Arrays.stream(ClinicFile.values())
                .filter(file -> names.contains(file.fileName()))
                .toList();
    }

    /** How many other files are there: films. */
    public synchronized long films() {
        return names.stream().filter(name -> !isTable(name)).count();
    }

    public ClinicFolder folder() {
        return new ClinicFolder(root);
    }

    /** Forgets all of it. */
    @Override
    public synchronized void close() throws IOException {
        FileSystemUtils.deleteRecursively(root);
        names.clear();
    }
}
