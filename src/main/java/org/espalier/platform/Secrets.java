package org.espalier.platform;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;

/** Passwords from the environment, from files it names, or made once and kept in a file only the owner can read. */
final class Secrets {

    private static final SecureRandom RANDOM = new SecureRandom();

    private Secrets() {}

    /** The value of NAME, or the content of the file that NAME_FILE names. */
    static Optional<String> fromEnvironment(String name) {
        var direct = Optional.ofNullable(System.getenv(name)).filter(value -> !value.isBlank());
        return direct.or(
                () -> Optional.ofNullable(System.getenv(name + "_FILE")).map(Secrets::read));
    }

    static Map<DatabaseRole, String> rolesFromEnvironment() {
        var passwords = new EnumMap<DatabaseRole, String>(DatabaseRole.class);
        for (var role : DatabaseRole.values()) {
            fromEnvironment("ESPALIER_DB_" + role.name() + "_PASSWORD").ifPresent(value -> passwords.put(role, value));
        }
        return passwords;
    }

    /** Reads the named secrets of a file, making the file and what is missing in it first. */
    static Properties keptIn(Path file, Iterable<String> names) {
        var kept = new Properties();
        try {
            if (Files.exists(file)) {
                kept.load(new StringReader(Files.readString(file)));
            }
            boolean changed = false;
            for (var name : names) {
                changed |= kept.putIfAbsent(name, random()) == null;
            }
            if (changed) {
                write(file, kept);
            }
            return kept;
        } catch (IOException e) {
            throw new IllegalStateException("Cannot read or write the secrets in " + file, e);
        }
    }

    private static void write(Path file, Properties secrets) throws IOException {
        Files.createDirectories(file.getParent());
        var text = new StringBuilder();
        secrets.forEach(
                (name, value) -> text.append(name).append('=').append(value).append('\n'));
        var fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(fresh);
        Files.createFile(
                fresh, PosixFilePermissions.asFileAttribute(Set.copyOf(PosixFilePermissions.fromString("rw-------"))));
        Files.writeString(fresh, text, StandardOpenOption.DSYNC);
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
    }

    private static String random() {
        var bytes = new byte[24];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file)).strip();
        } catch (IOException e) {
            throw new IllegalStateException("Cannot read the secret file " + file, e);
        }
    }
}
