package org.espalier.today;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.patient.Child;

/**
 * What the reader began and did not finish.
 *
 * @param subject a film for a reading, else a child
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
        PROCEDURE
    }
}
