package org.espalier.access;

import java.util.HexFormat;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The caller's own passkeys; they are added in the browser, at the door's own addresses. */
@Service
@Transactional
public class PasskeyService {

    private final JdbcOwnPasskeyRepository passkeys;
    private final SessionService sessions;
    private final CurrentStaff currentStaff;
    private final SignAgain signAgain;
    private final AccessLog log;

    PasskeyService(
            JdbcOwnPasskeyRepository passkeys,
            SessionService sessions,
            CurrentStaff currentStaff,
            SignAgain signAgain,
            AccessLog log) {
        this.passkeys = passkeys;
        this.sessions = sessions;
        this.currentStaff = currentStaff;
        this.signAgain = signAgain;
        this.log = log;
    }

    /** The caller's own, the last used first. */
    public List<OwnPasskey> mine() {
        return passkeys.of(currentStaff.id());
    }

    /**
     * Removes one of the caller's own; it opens nothing from now on, and their other sessions end.
     *
     * @throws org.springframework.security.access.AccessDeniedException when it is long since the caller proved who
     *     they are
     */
    public void remove(String id) {
        signAgain.prove();
        if (passkeys.remove(currentStaff.id(), HexFormat.of().parseHex(id))) {
            sessions.endAllButThis(currentStaff.id());
            log.managed("passkey removed", null, currentStaff.id());
        }
    }
}
