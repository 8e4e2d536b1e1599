package org.espalier.patient.ui;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the form of a finding, right or wrong.
 *
 * @param id the fact that will come of it
 * @param fields what was typed or chosen, by field
 * @param correcting the fact it will stand in place of; null for a new one
 */
record TypedFinding(
        UUID id, Map<String, String> fields, @Nullable UUID correcting) {}
