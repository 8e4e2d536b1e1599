package org.espalier.followup;

import java.time.LocalDate;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** A child whose record another hospital of the network reads, too, from acceptance until either ends it. */
public record SharedCare(
        UUID id,
        ChildId child,
        SiteId from,
        SiteId with,
        String childName,
        LocalDate birthDate,
        String why,
        State state,
        LocalDate askedOn) {

    /** How far it is. */
    public enum State {
        ASKED,
        ACCEPTED,
        DECLINED,
        /** Taken back before there was an answer. */
        WITHDRAWN,
        ENDED
    }
}
