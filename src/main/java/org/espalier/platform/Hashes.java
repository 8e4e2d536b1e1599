package org.espalier.platform;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The hash by which bytes are known. */
final class Hashes {

    private Hashes() {}

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
