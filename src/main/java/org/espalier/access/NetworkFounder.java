package org.espalier.access;

import java.time.Clock;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Gives an empty network its first operator, who adds everybody else. Nobody can be asked for leave yet. */
@Component
public class NetworkFounder {

    private final JdbcStaffRepository staff;
    private final PasswordEncoder encoder;
    private final Clock clock;

    NetworkFounder(JdbcStaffRepository staff, PasswordEncoder encoder, Clock clock) {
        this.staff = staff;
        this.encoder = encoder;
        this.clock = clock;
    }

    /**
     * Adds the operator, who must change the password at the first sign-in.
     *
     * @return false when there is an operator already; nothing is done then
     */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public boolean found(StaffId operator, String login, String password) {
        return staff.addFirstOperator(operator, login, PasswordService.hash(encoder, password), clock.instant());
    }
}
