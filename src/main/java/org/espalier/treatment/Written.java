package org.espalier.treatment;

import java.time.Instant;
import org.espalier.patient.FactId;
import org.jspecify.annotations.Nullable;

/**
 * A fact as it was written down: by whom, when, and in place of what.
 *
 * @param fact null when this only withdraws what it supersedes
 * @param by name of who wrote it down; null for the house itself
 * @param supersedes the fact this one stands in place of
 * @param reason why, when it supersedes one
 */
public record Written<F extends TreatmentFact>(
        FactId id,
        @Nullable F fact,
        @Nullable String by,
        Instant at,
        @Nullable FactId supersedes,
        @Nullable String reason) {

    static String required(String text, int longest) {
        var tidy = tidy(text, longest);
        if (tidy == null) {
            throw new IllegalArgumentException("Nothing is written where something must be");
        }
        return tidy;
    }

    static @Nullable String tidy(@Nullable String text, int longest) {
        var tidy = text == null ? "" : text.strip();
        if (tidy.length() > longest) {
            throw new IllegalArgumentException("Longer than " + longest + " characters");
        }
        return tidy.isEmpty() ? null : tidy;
    }
}
