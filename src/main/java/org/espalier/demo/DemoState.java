package org.espalier.demo;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Supplier;

/** What the demonstration remembers from start to start, in a file of the data folder that only its owner may read. */
final class DemoState {

    private final Path file;
    private final Properties kept = new Properties();

    DemoState(Path folder) {
        file = folder.resolve("demo.properties");
        if (Files.exists(file)) {
            try (Reader reader = Files.newBufferedReader(file)) {
                kept.load(reader);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    Optional<String> find(String key) {
        return Optional.ofNullable(kept.getProperty(key));
    }

    /** What is kept under the key; made and kept now if nothing is. */
    String get(String key, Supplier<String> first) {
        return find(key).orElseGet(() -> put(key, first.get()));
    }

    /** Keeps a value before anything is done with it. */
    String put(String key, String value) {
        kept.setProperty(key, value);
        try {
            write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return value;
    }

    private void write() throws IOException {
        Path fresh = file.resolveSibling("demo.properties.new");
        Files.deleteIfExists(fresh);
        if (fresh.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(fresh, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        }
        try (Writer writer = Files.newBufferedWriter(fresh)) {
            kept.store(writer, "The invented hospitals, staff and children of the demonstration.");
        }
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
