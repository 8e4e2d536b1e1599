package org.espalier.access;

import java.util.EnumSet;
import java.util.Set;

/** How somebody may stand to a child, and who is told anything of it then. */
enum Situation {
    /** Works at the hospital that has care. */
    OWN(EnumSet.allOf(Role.class)),
    /** Works at another hospital of the network. */
    OTHER(EnumSet.noneOf(Role.class)),
    /** Works at another hospital; a colleague there was given leave to see the case, without the name. */
    GRANTED(EnumSet.complementOf(EnumSet.of(Role.ARCHIVE))),
    /** Such a leave, an emergency, and shared care, all of them over. */
    ENDED(EnumSet.noneOf(Role.class)),
    /** Took emergency access; only surgeons can. */
    EMERGENCY(EnumSet.of(Role.SURGEON)),
    /** Works at a hospital that shares the care. */
    SHARED(EnumSet.of(Role.SURGEON, Role.NURSE, Role.RADIOGRAPHER)),
    /** Works at the hospital from which the child was passed on: reads what was recorded there, and nothing since. */
    TRANSFERRED(EnumSet.allOf(Role.class));

    private final Set<Role> told;

    Situation(Set<Role> told) {
        this.told = told;
    }

    /** Whether somebody of the role may be told anything at all. */
    boolean mayTell(Role role) {
        return told.contains(role);
    }
}
