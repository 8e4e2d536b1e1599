package org.espalier.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * A child who carries the lot of a notice, may, or did.
 *
 * @param since the day of the first operation that took of it
 * @param surgeon who operated then
 * @param told how and by whom the family was told; empty until then
 */
public record Carrier(
        ChildId child, SiteId site, Certainty certainty, LocalDate since, String surgeon, Optional<Told> told) {

    /** Whether the child carries it. */
    public enum Certainty {
        CERTAIN,
        /** The lots were mixed when it was taken. */
        POSSIBLE,
        /** All of it was taken out; for information. */
        FORMER
    }

    /** How the family was told. */
    public record Told(String by, Instant at, String how) {}
}
