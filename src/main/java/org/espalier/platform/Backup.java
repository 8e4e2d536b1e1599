package org.espalier.platform;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.postgresql.PGConnection;

/**
 * Writes the whole house into one file: every table as one snapshot saw it, every film, and a list of the hashes of
 * all. Films only ever arrive, so those on the disk after the snapshot hold at least those the snapshot names.
 */
final class Backup {

    private final DatabaseSettings settings;
    private final Path films;
    private final StringBuilder list = new StringBuilder();

    Backup(DatabaseSettings settings, Path films) {
        this.settings = settings;
        this.films = films;
    }

    /** Writes the file; it has its name only when it is whole and on the disk. */
    void write(Path file, PrintStream progress) throws IOException, SQLException {
        var unfinished = file.resolveSibling(file.getFileName() + ".unfinished");
        Files.deleteIfExists(unfinished);
        Files.createFile(
                unfinished, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        try (var zip = new ZipOutputStream(Files.newOutputStream(unfinished, StandardOpenOption.WRITE))) {
            zip.setLevel(Deflater.BEST_SPEED);
            int tables = writeTables(zip);
            int kept = writeFilms(zip);
            zip.putNextEntry(new ZipEntry(BackupFile.LIST));
            zip.write(list.toString().getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
            progress.printf("%d tables and %d films written.%n", tables, kept);
        }
        try (var channel = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
    }

    private int writeTables(ZipOutputStream zip) throws IOException, SQLException {
        try (var connection = DriverManager.getConnection(
                settings.url(), DatabaseRole.BACKUP.user(), settings.password(DatabaseRole.BACKUP))) {
            connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            connection.setReadOnly(true);
            connection.setAutoCommit(false);
            list.append(BackupFile.schemaLine(Tables.version(connection))).append('\n');
            List<Table> tables = Tables.inOrderOfReference(connection);
            for (var table : tables) {
                var copy = connection.unwrap(PGConnection.class).getCopyAPI();
                writeEntry(zip, BackupFile.tableEntry(table), out -> copy.copyOut(table.copyOut(), out));
            }
            connection.rollback();
            return tables.size();
        }
    }

    private int writeFilms(ZipOutputStream zip) throws IOException, SQLException {
        int count = 0;
        try (var found = Files.walk(films)) {
            for (var film : found.filter(BackupFile::isFilm).sorted().toList()) {
                writeEntry(zip, BackupFile.filmEntry(film), out -> Files.copy(film, out));
                count++;
            }
        }
        return count;
    }

    private void writeEntry(ZipOutputStream zip, String name, Content content) throws IOException, SQLException {
        MessageDigest digest = Hashes.sha256();
        zip.putNextEntry(new ZipEntry(name));
        content.writeTo(new DigestOutputStream(new Unclosed(zip), digest));
        zip.closeEntry();
        list.append(HexFormat.of().formatHex(digest.digest()))
                .append("  ")
                .append(name)
                .append('\n');
    }

    private interface Content {
        void writeTo(OutputStream out) throws IOException, SQLException;
    }

    /** Lets an entry be written without closing the file it is part of. */
    private static final class Unclosed extends FilterOutputStream {

        Unclosed(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            out.write(bytes, offset, length);
        }

        @Override
        public void close() throws IOException {
            out.flush();
        }
    }
}
