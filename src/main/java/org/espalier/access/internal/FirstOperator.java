package org.espalier.access.internal;

import java.io.IOException;
import org.espalier.access.NetworkFounder;
import org.espalier.access.StaffId;
import org.espalier.platform.Ids;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/** Adds the operator of an empty network at the start, so that there is somebody to add everybody else. */
@Component
class FirstOperator implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(FirstOperator.class);
    private static final int LEAST_CHARACTERS = 12;

    private final AccessProperties.FirstOperator asked;
    private final NetworkFounder founder;
    private final Ids ids;

    FirstOperator(AccessProperties properties, NetworkFounder founder, Ids ids) {
        asked = properties.firstOperator();
        this.founder = founder;
        this.ids = ids;
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
        if (founder.found(new StaffId(ids.next()), asked.login(), password)) {
            LOG.info("Added the first operator of the network; the password must be changed at the first sign-in");
        }
    }
}
