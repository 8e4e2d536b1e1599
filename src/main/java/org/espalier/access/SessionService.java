package org.espalier.access;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Where somebody is signed in, and ending it elsewhere; an ended session opens nothing at its next question, on any
 * node.
 */
@Service
@Transactional
public class SessionService {

    private final JdbcSessionRepository sessions;
    private final SessionHere here;
    private final CurrentStaff currentStaff;
    private final SignAgain signAgain;
    private final AccessLog log;
    private final Clock clock;
    private final Duration idle;
    private final Duration whole;

    SessionService(
            JdbcSessionRepository sessions,
            SessionHere here,
            CurrentStaff currentStaff,
            SignAgain signAgain,
            AccessLog log,
            Clock clock,
            @Value("${espalier.access.session.idle:30m}") Duration idle,
            @Value("${espalier.access.session.whole:12h}") Duration whole) {
        this.sessions = sessions;
        this.here = here;
        this.currentStaff = currentStaff;
        this.signAgain = signAgain;
        this.log = log;
        this.clock = clock;
        this.idle = idle;
        this.whole = whole;
    }

    /** The caller's own that still run, the last used first. */
    public List<OpenSession> mine() {
        var now = clock.instant();
        return sessions.open(
                currentStaff.id(), now.minus(idle), now.minus(whole), here.id().orElse(null));
    }

    /**
     * Ends one of the caller's own.
     *
     * @throws org.springframework.security.access.AccessDeniedException when it is long since the caller proved who
     *     they are
     */
    public void end(UUID session) {
        signAgain.prove();
        if (sessions.end(session, clock.instant())) {
            log.managed("session ended", null, currentStaff.id());
        }
    }

    /**
     * Ends all the caller's own but the one that asks.
     *
     * @throws org.springframework.security.access.AccessDeniedException when it is long since the caller proved who
     *     they are
     */
    public void endOthers() {
        signAgain.prove();
        endAllButThis(currentStaff.id());
        log.managed("other sessions ended", null, currentStaff.id());
    }

    /** Ends all of somebody else, as the operator of the network. */
    public void endAllOf(StaffId person) {
        sessions.endAll(person, null, clock.instant());
        log.managed("sessions ended", null, person);
    }

    /** After a change of how the person gets in: whoever else sits in a session of theirs is out. */
    void endAllButThis(StaffId person) {
        sessions.endAll(person, here.id().orElse(null), clock.instant());
    }
}
