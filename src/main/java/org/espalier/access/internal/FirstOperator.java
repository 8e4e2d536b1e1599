package org.espalier.access.internal;

import java.io.IOException;
import java.time.Clock;
import java.util.Objects;
import org.espalier.platform.Ids;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/** Adds the operator of an empty network at the start, so that there is somebody to add everybody else. */
@Component
class FirstOperator implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(FirstOperator.class);
    private static final int LEAST_CHARACTERS = 12;

    private final AccessProperties.FirstOperator asked;
    private final JdbcSignInRepository signIns;
    private final PasswordEncoder encoder;
    private final Ids ids;
    private final Clock clock;

    FirstOperator(
            AccessProperties properties, JdbcSignInRepository signIns, PasswordEncoder encoder, Ids ids, Clock clock) {
        asked = properties.firstOperator();
        this.signIns = signIns;
        this.encoder = encoder;
        this.ids = ids;
        this.clock = clock;
    }

    @Override
    public void run(ApplicationArguments arguments) throws IOException {
        if (asked.login().isBlank()) {
            return;
        }
        var password = asked.secret();
        if (password.length() < LEAST_CHARACTERS) {
            throw new IllegalStateException("The first operator needs a password of at least " + LEAST_CHARACTERS
                    + " characters: set ESPALIER_FIRST_OPERATOR_PASSWORD_FILE to the file that holds it.");
        }
        if (add(password)) {
            LOG.info("Added the first operator of the network; the password must be changed at the first sign-in");
        }
    }

    private boolean add(String password) {
        var hash = Objects.requireNonNull(encoder.encode(password));
        return signIns.addFirstOperator(ids.next(), asked.login(), hash, clock.instant());
    }
}
