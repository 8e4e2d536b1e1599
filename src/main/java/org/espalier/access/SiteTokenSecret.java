package org.espalier.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/** The secret of a site token: 256 random bits, kept as their SHA-256 alone. So much chance needs no slow hash. */
public record SiteTokenSecret(String value) {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    static SiteTokenSecret fresh() {
        var bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return new SiteTokenSecret(
                "espalier_" + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    public byte[] sha256() {
        try {
            return MessageDigest.getInstance("SHA-256").digest(value.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A secret never reaches a log. */
    @Override
    public String toString() {
        return "SiteTokenSecret";
    }
}
