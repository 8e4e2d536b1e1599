package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * A child on its way to another hospital of the network; until that one accepts, the old one has care.
 *
 * @param answeredOn the day it was accepted, declined or taken back; empty while it is asked
 */
public record Transfer(
        UUID id,
        ChildId child,
        SiteId from,
        SiteId to,
        String childName,
        LocalDate birthDate,
        String why,
        State state,
        LocalDate askedOn,
        Optional<LocalDate> answeredOn) {

    /** How far it is. */
    public enum State {
        ASKED,
        ACCEPTED,
        DECLINED,
        WITHDRAWN
    }
}
