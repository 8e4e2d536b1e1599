package org.espalier.access;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import javax.crypto.spec.SecretKeySpec;

/**
 * Codes by time, as RFC 6238 has them: an HMAC over the number of whole 30 s since 1970, cut to digits. A code of the
 * step before and of the step after is taken, too, for clocks differ (section 5.2 of the RFC).
 */
final class TimeCodes {

    private static final Duration STEP = Duration.ofSeconds(30);

    private final TimeBasedOneTimePasswordGenerator generator;

    /** The codes that every authenticator app makes when told nothing else: six digits by HMAC-SHA-1. */
    TimeCodes() {
        this(6, TimeBasedOneTimePasswordGenerator.TOTP_ALGORITHM_HMAC_SHA1);
    }

    TimeCodes(int digits, String algorithm) {
        generator = new TimeBasedOneTimePasswordGenerator(STEP, digits, algorithm);
    }

    /** The code of the moment. */
    String at(byte[] secret, Instant at) {
        try {
            var key = new SecretKeySpec(secret, generator.getAlgorithm());
            return generator.generateOneTimePasswordString(key, at, Locale.ROOT);
        } catch (InvalidKeyException e) {
            throw new IllegalArgumentException("not a key of " + generator.getAlgorithm(), e);
        }
    }

    /**
     * The step whose code was given, among that of the moment and its neighbours.
     *
     * @param after steps up to this one are used up
     * @return empty when the code is none of them
     */
    OptionalLong step(byte[] secret, String code, Instant now, long after) {
        long here = Math.floorDiv(now.getEpochSecond(), STEP.toSeconds());
        var given = code.replaceAll("\\s", "").getBytes(StandardCharsets.UTF_8);
        return LongStream.rangeClosed(here - 1, here + 1)
                .filter(step -> step > after)
                .filter(step -> MessageDigest.isEqual(given, bytes(secret, step)))
                .findFirst();
    }

    private byte[] bytes(byte[] secret, long step) {
        return at(secret, Instant.ofEpochSecond(step * STEP.toSeconds())).getBytes(StandardCharsets.UTF_8);
    }
}
