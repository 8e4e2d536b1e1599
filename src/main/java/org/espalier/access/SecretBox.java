package org.espalier.access;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Keeps the secrets of second factors unreadable in the database and its backups: AES-256-GCM, bound to the person, by
 * a key from the environment or a file. Where neither is named a key is made in the data folder, for one node alone.
 */
@Component
class SecretBox {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final byte VERSION = 1;
    private static final int KEY_BYTES = 32;
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;

    private final SecretKeySpec key;

    SecretBox(
            @Value("${espalier.access.second-factor.key:}") String key,
            @Value("${espalier.access.second-factor.key-file:}") String keyFile,
            @Value("${espalier.data}") Path data)
            throws IOException {
        var text = key.isBlank() ? read(keyFile, data) : key;
        this.key = new SecretKeySpec(decoded(text), "AES");
    }

    byte[] close(StaffId owner, byte[] secret) {
        var nonce = random(NONCE_BYTES);
        var closed = run(Cipher.ENCRYPT_MODE, owner, nonce, secret);
        return ByteBuffer.allocate(1 + NONCE_BYTES + closed.length)
                .put(VERSION)
                .put(nonce)
                .put(closed)
                .array();
    }

    /**
     * Opens what was closed for the owner.
     *
     * @throws IllegalStateException when it was closed by another key or for somebody else
     */
    byte[] open(StaffId owner, byte[] box) {
        var bytes = ByteBuffer.wrap(box, 1, box.length - 1);
        var nonce = new byte[NONCE_BYTES];
        var closed = new byte[bytes.remaining() - NONCE_BYTES];
        bytes.get(nonce).get(closed);
        return run(Cipher.DECRYPT_MODE, owner, nonce, closed);
    }

    static byte[] random(int length) {
        var bytes = new byte[length];
        RANDOM.nextBytes(bytes);
        return bytes;
    }

    private byte[] run(int mode, StaffId owner, byte[] nonce, byte[] input) {
        try {
            var cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD(ByteBuffer.allocate(2 * Long.BYTES)
                    .putLong(owner.value().getMostSignificantBits())
                    .putLong(owner.value().getLeastSignificantBits())
                    .flip());
            return cipher.doFinal(input);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("The secret of a second factor does not open with the key of this node", e);
        }
    }

    private static byte[] decoded(String text) {
        try {
            var bytes = Base64.getDecoder().decode(text.strip());
            if (bytes.length == KEY_BYTES) {
                return bytes;
            }
        } catch (IllegalArgumentException e) {
            // Told below, without the text: a key never reaches a log.
        }
        throw new IllegalStateException("The key of second factors is 32 random bytes in Base64, as"
                + " `openssl rand -base64 32` makes them: look at ESPALIER_SECOND_FACTOR_KEY or _KEY_FILE.");
    }

    private static String read(String named, Path data) throws IOException {
        if (!named.isBlank()) {
            return Files.readString(Path.of(named));
        }
        var own = data.resolve("second-factor.key");
        if (!Files.exists(own)) {
            make(own);
        }
        return Files.readString(own);
    }

    private static void make(Path file) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        var ownersAlone = PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));
        try {
            Files.createFile(file, ownersAlone);
            Files.writeString(file, Base64.getEncoder().encodeToString(random(KEY_BYTES)));
        } catch (FileAlreadyExistsException e) {
            throw new IllegalStateException("Another program is making " + file + ": start again", e);
        }
    }
}
