package org.espalier.access;

import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The caller's own password. */
@Service
public class PasswordService {

    private final JdbcPasswordRepository passwords;
    private final PasswordRules rules;
    private final PasswordEncoder encoder;
    private final CurrentStaff currentStaff;
    private final SessionService sessions;
    private final Clock clock;

    PasswordService(
            JdbcPasswordRepository passwords,
            PasswordRules rules,
            PasswordEncoder encoder,
            CurrentStaff currentStaff,
            SessionService sessions,
            Clock clock) {
        this.passwords = passwords;
        this.rules = rules;
        this.encoder = encoder;
        this.currentStaff = currentStaff;
        this.sessions = sessions;
        this.clock = clock;
    }

    /** Changes the caller's password and ends their other sessions; when it says a problem, nothing was changed. */
    @Transactional
    public Optional<PasswordProblem> change(String current, String fresh) {
        var staff = currentStaff.id();
        var kept = passwords.of(staff);
        if (!encoder.matches(current, kept.hash())) {
            return Optional.of(PasswordProblem.CURRENT_WRONG);
        }
        if (current.equals(fresh)) {
            return Optional.of(PasswordProblem.UNCHANGED);
        }
        var problem = rules.problem(fresh, kept.login(), kept.name());
        if (problem.isEmpty()) {
            passwords.set(staff, hash(encoder, fresh), clock.instant());
            sessions.endAllButThis(staff);
        }
        return problem;
    }

    /** The hash of a password that is there. */
    static String hash(PasswordEncoder encoder, String password) {
        return Objects.requireNonNull(encoder.encode(password));
    }
}
