package org.espalier.access.internal;

import java.time.Duration;
import org.springframework.security.authentication.LockedException;

/** Thrown instead of looking at a password while a name or a source address has to wait. */
final class TooManyAttempts extends LockedException {

    private static final long serialVersionUID = 1;

    private final Duration left;

    TooManyAttempts(Duration left) {
        super("too many attempts");
        this.left = left;
    }

    Duration left() {
        return left;
    }
}
