package org.espalier.film;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;

/**
 * One fact about whose film it is; the latest counts, the earlier ones stay visible.
 *
 * @param child empty when the film was laid back in the tray
 * @param takenOn the day of the exposure as the person said it; empty when the film's own stands
 * @param supersedes the fact before it
 * @param reason why the fact before it no longer stands
 * @param by who said so; empty for the house itself
 */
public record FilmAssignment(
        UUID id,
        Optional<ChildId> child,
        Optional<LocalDate> takenOn,
        Manner manner,
        Optional<UUID> supersedes,
        Optional<String> reason,
        Optional<StaffId> by,
        Instant at) {

    /** How the film came to the child. */
    public enum Manner {
        /** By the local number and birth date it carries. */
        MATCHED,
        /** By a person. */
        BY_HAND
    }
}
