package org.espalier.reading;

import java.time.Instant;
import java.util.Optional;
import org.espalier.film.FilmId;

/**
 * A reading its reader is in the middle of. Theirs alone until signed.
 *
 * @param revision counts every change
 * @param marksRevision the revision in which the marks last changed: a change that builds on it or later knows them all
 * @param supersedes the signed reading this one will supersede
 * @param secondOf the signed reading this one reads again, by another reader
 */
public record ReadingDraft(
        ReadingId id,
        FilmId film,
        long revision,
        Instant startedAt,
        ReadingSettings settings,
        Marks marks,
        long marksRevision,
        Optional<ReadingId> supersedes,
        Optional<ReadingId> secondOf) {

    /** Whether its reader must not see what others read of the film until this is signed. */
    public boolean isBlind() {
        return secondOf.isPresent() && supersedes.isEmpty();
    }

    ReadingDraft withMarks(Marks marks) {
        long next = revision + 1;
        return new ReadingDraft(id, film, next, startedAt, settings, marks, next, supersedes, secondOf);
    }

    ReadingDraft withSettings(ReadingSettings settings) {
        return new ReadingDraft(
                id, film, revision + 1, startedAt, settings, marks, marksRevision, supersedes, secondOf);
    }
}
