package org.espalier.reading;

import java.time.Instant;
import java.util.Optional;
import org.espalier.access.StaffId;
import org.espalier.film.Film;
import org.jspecify.annotations.Nullable;

/**
 * A draft about to be signed, with everything that decides whether it may be.
 *
 * @param reason why the signed reading is superseded; null when none is given
 */
record Signing(
        ReadingDraft draft,
        Film film,
        FilmMeasurement measurement,
        @Nullable String reason) {

    /** Why it may not be signed as it stands; empty when it may. */
    Optional<SignOutcome.Refused> refusal(long revisionSeen) {
        if (draft.revision() != revisionSeen) {
            return refused(SignOutcome.Reason.CHANGED_SINCE);
        }
        if (film.child().isEmpty()) {
            return refused(SignOutcome.Reason.FILM_WITHOUT_CHILD);
        }
        if (measurement.isImpossible()) {
            return refused(SignOutcome.Reason.IMPOSSIBLE_GEOMETRY);
        }
        if (measurement.values().isEmpty()) {
            return refused(SignOutcome.Reason.NO_NUMBERS);
        }
        return draft.supersedes().isPresent() && reason == null
                ? refused(SignOutcome.Reason.REASON_MISSING)
                : Optional.empty();
    }

    /** The reading it becomes. */
    Reading reading(StaffId reader, String readerName, Instant now) {
        return new Reading(
                draft.id(),
                film.site(),
                film.child().orElseThrow(),
                film.id(),
                reader,
                readerName,
                draft.startedAt(),
                now,
                draft.settings().limbs(),
                measurement.scale().calibration(),
                measurement.scale().ballPixels(),
                draft.settings().taken(),
                draft.settings().screws(),
                draft.secondOf(),
                draft.supersedes().map(before -> new Reading.Superseding(before, String.valueOf(reason))),
                Optional.empty(),
                measurement.values());
    }

    private static Optional<SignOutcome.Refused> refused(SignOutcome.Reason reason) {
        return Optional.of(new SignOutcome.Refused(reason));
    }
}
