package org.espalier.today;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.patient.Child;

/**
 * What the reader began and did not finish.
 *
 * @param subject a film for a reading, a visit for what happens to one, else a child
 * @param child empty while it is not registered
 * @param typedName the name typed for a child that is not registered
 */
public record OpenDraft(Kind kind, UUID subject, Optional<Child> child, String typedName, Instant savedAt) {

    /** What was begun. */
    public enum Kind {
        READING,
        CHILD_NEW,
        CHILD_EDIT,
        DIAGNOSIS,
        BODY_SIZE,
        BONE_AGE,
        VISIT,
        STAGE,
        LAB,
        BONE_DISEASE,
        IMAGING,
        PROCEDURE,
        ATTEMPT,
        FAMILY,
        NEXT_VISIT_DATE,
        NEXT_VISIT_NOT_BROUGHT,
        NEXT_VISIT_GIVEN_UP,
        NEXT_VISIT_END,
        NEXT_VISIT_RESUME,
        SHARED_CARE,
        TRANSFER
    }
}
