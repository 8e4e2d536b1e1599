package org.espalier.access;

import org.espalier.platform.CallerPrincipal;

/** The principal of a session or of a request with a site token. */
public interface SignedInStaff extends CallerPrincipal {

    StaffId staff();

    /** Whether a new password must be chosen before anything else. */
    boolean mustChangePassword();
}
