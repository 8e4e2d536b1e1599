package org.espalier.platform;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Makes identifiers that sort by the time they were made (UUID version 7, RFC 9562 section 5.7). */
@Component
public class Ids {

    private static final SecureRandom RANDOM = new SecureRandom();

    private final Clock clock;

    Ids(Clock clock) {
        this.clock = clock;
    }

    public UUID next() {
        long high = clock.millis() << 16 | 0x7000L | RANDOM.nextLong() & 0x0fffL;
        long low = RANDOM.nextLong() & 0x3fffffffffffffffL | 0x8000000000000000L;
        return new UUID(high, low);
    }
}
