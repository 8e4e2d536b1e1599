package org.espalier.platform;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.springframework.util.FileSystemUtils;

/** The folder a house keeps its films in, and its database when that is embedded. One program at a time may use it. */
public record DataFolder(Path root) {

    public DataFolder {
        root = root.toAbsolutePath().normalize();
    }

    /** The folder that {@code ESPALIER_DATA} names, or {@code var/data}. */
    public static DataFolder standard() {
        return new DataFolder(Path.of(Optional.ofNullable(System.getenv("ESPALIER_DATA"))
                .filter(named -> !named.isBlank())
                .orElse("var/data")));
    }

    /** Forgets everything in the folder; refused while a program uses it. */
    public void forget() throws IOException {
        if (Files.exists(root)) {
            try (var lock = lock()) {
                LeftoverServer.stop(cluster());
                FileSystemUtils.deleteRecursively(root);
            }
        }
    }

    Path films() {
        return root.resolve("films");
    }

    Path cluster() {
        return root.resolve("database");
    }

    /** A file that is there once the database was made whole. */
    Path ready() {
        return root.resolve("database.ready");
    }

    Path secrets() {
        return root.resolve("database.secrets");
    }

    /** Claims the folder until the lock is closed or the program ends, however it ends. */
    Lock lock() throws IOException {
        Files.createDirectories(root);
        var channel = FileChannel.open(root.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            var lock = channel.tryLock();
            if (lock != null) {
                return new Lock(channel, lock);
            }
        } catch (OverlappingFileLockException e) {
            // claimed by this very program: the same answer as for any other
        }
        channel.close();
        throw new IOException("Espalier is running already on the data folder " + root + ". Stop it first.");
    }

    record Lock(FileChannel channel, FileLock lock) implements AutoCloseable {

        @Override
        public void close() throws IOException {
            lock.release();
            channel.close();
        }
    }
}
