package org.espalier.access;

import java.time.Clock;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Whose sign-in at the provider belongs to whom here: the operator's word alone. */
@Service
@Transactional
public class SignOnService {

    private final JdbcSubjectRepository subjects;
    private final ObjectProvider<SingleSignOn> provider;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Clock clock;

    SignOnService(
            JdbcSubjectRepository subjects,
            ObjectProvider<SingleSignOn> provider,
            CurrentStaff currentStaff,
            AccessLog log,
            Clock clock) {
        this.subjects = subjects;
        this.provider = provider;
        this.currentStaff = currentStaff;
        this.log = log;
        this.clock = clock;
    }

    /** Whether there is a provider at all. */
    public boolean isOffered() {
        return provider.getIfAvailable() != null;
    }

    /** The provider's word for the person; empty when they sign in here alone. */
    public Optional<String> subjectOf(StaffId person) {
        return Optional.ofNullable(provider.getIfAvailable()).flatMap(one -> subjects.find(one.issuer(), person));
    }

    /**
     * From now on whoever signs in at the provider as the subject is this person here; it replaces what was said
     * before.
     *
     * @param subject the provider's unchanging word for the person, not a name or an address
     * @throws DuplicateKeyException when it is somebody else's
     */
    public void link(StaffId person, String subject) {
        var issuer = provider.getObject().issuer();
        subjects.remove(issuer, person);
        subjects.add(issuer, subject.strip(), person, currentStaff.id(), clock.instant());
        log.managed("single sign-on linked", null, person);
    }

    /** The person signs in here alone again. */
    public void unlink(StaffId person) {
        subjects.remove(provider.getObject().issuer(), person);
        log.managed("single sign-on unlinked", null, person);
    }
}
