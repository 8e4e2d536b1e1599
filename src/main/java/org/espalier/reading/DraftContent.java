package org.espalier.reading;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is kept of a reading in the making, beside what every draft has. */
record DraftContent(
        ReadingSettings settings,
        Marks marks,
        long marksRevision,
        @Nullable UUID supersedes) {

    static DraftContent of(ReadingDraft draft) {
        return new DraftContent(
                draft.settings(),
                draft.marks(),
                draft.marksRevision(),
                draft.supersedes().map(ReadingId::value).orElse(null));
    }
}
