package org.espalier.platform;

import java.util.regex.Pattern;

/**
 * Names bytes kept in the film folder by what they are.
 *
 * @param sha256 64 lower-case hexadecimal digits
 * @param size bytes
 */
public record BlobRef(String sha256, long size) {

    private static final Pattern HEX = Pattern.compile("[0-9a-f]{64}");

    public BlobRef {
        if (!HEX.matcher(sha256).matches() || size < 0) {
            throw new IllegalArgumentException("not a SHA-256 and size: " + sha256 + ", " + size);
        }
    }
}
