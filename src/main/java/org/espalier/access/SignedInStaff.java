package org.espalier.access;

import java.util.Optional;
import org.espalier.platform.CallerPrincipal;

/** The principal of a session or of a request with a site token. */
public interface SignedInStaff extends CallerPrincipal {

    StaffId staff();

    /** Whether a new password must be chosen before anything else. */
    boolean mustChangePassword();

    /** What must follow the password of this person; a passkey or a code given in the session does away with it. */
    default Optional<SecondStep.Kind> secondStep() {
        return Optional.empty();
    }
}
