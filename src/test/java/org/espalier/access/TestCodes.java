package org.espalier.access;

import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.time.Instant;

/** The telephone of a test: makes codes from the secret that was shown. */
public final class TestCodes {

    private static final String SIGNS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    private static final int STEP_SECONDS = 30;

    private TestCodes() {}

    public static String now(String secret, Clock clock) {
        return at(secret, clock.instant());
    }

    /** The code of the step to come, which is taken already. */
    public static String next(String secret, Clock clock) {
        return at(secret, clock.instant().plusSeconds(STEP_SECONDS));
    }

    private static String at(String secret, Instant at) {
        return new TimeCodes().at(bytes(secret.replace(" ", "")), at);
    }

    private static byte[] bytes(String text) {
        var bytes = new ByteArrayOutputStream();
        int kept = 0;
        int bits = 0;
        for (char sign : text.toCharArray()) {
            kept = kept << 5 | SIGNS.indexOf(sign);
            bits += 5;
            if (bits >= 8) {
                bits -= 8;
                bytes.write(kept >> bits);
                kept &= (1 << bits) - 1;
            }
        }
        return bytes.toByteArray();
    }
}
