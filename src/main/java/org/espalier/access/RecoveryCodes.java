package org.espalier.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Codes for the day the telephone is lost: each opens once. 120 random bits each, so that a quick hash is enough. */
public record RecoveryCodes(List<String> codes) {

    private static final int COUNT = 8;
    private static final int BYTES = 15;

    static RecoveryCodes fresh() {
        return new RecoveryCodes(Stream.generate(() -> grouped(Base32.of(SecretBox.random(BYTES))))
                .limit(COUNT)
                .toList());
    }

    static byte[] hash(String code) {
        var plain = code.toUpperCase(Locale.ROOT).replaceAll("[^A-Z2-7]", "");
        try {
            return MessageDigest.getInstance("SHA-256").digest(plain.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String grouped(String text) {
        return String.join("-", text.split("(?<=\\G.{4})"));
    }

    /** A code never reaches a log. */
    @Override
    public String toString() {
        return codes.size() + " recovery codes";
    }
}
