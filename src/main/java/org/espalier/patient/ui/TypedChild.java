package org.espalier.patient.ui;

import java.util.Objects;
import java.util.UUID;
import org.espalier.patient.ChildData;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the form about who a child is, right or wrong.
 *
 * @param sex name of the choice; null before any
 * @param version the version of the child that was before the reader; 0 for a new one
 * @param base what was before the reader; null for a new child
 */
record TypedChild(
        @Nullable UUID site,
        String familyName,
        String givenName,
        String birthDate,
        @Nullable String sex,
        String localNumber,
        long version,
        @Nullable ChildData base) {

    /** A draft of an earlier version of the form may lack a field: it reads as left empty. */
    TypedChild {
        familyName = Objects.requireNonNullElse(familyName, "");
        givenName = Objects.requireNonNullElse(givenName, "");
        birthDate = Objects.requireNonNullElse(birthDate, "");
        localNumber = Objects.requireNonNullElse(localNumber, "");
    }
}
