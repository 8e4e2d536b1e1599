package org.espalier.patient.ui;

import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the form of a finding, right or wrong.
 *
 * @param id the fact that will come of it; null in a draft that does not say
 * @param fields what was typed or chosen, by field
 * @param correcting the fact it will stand in place of; null for a new one
 */
record TypedFinding(
        @Nullable UUID id,
        Map<String, String> fields,
        @Nullable UUID correcting) {

    /** A draft of an earlier version of the form may lack its fields: they read as left empty. */
    TypedFinding {
        fields = Objects.requireNonNullElse(fields, Map.of());
    }
}
