package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a letter to a family says; no more of the child than its given name.
 *
 * @param appointment the date; empty when there is none
 * @param by the last good day
 */
record Letter(
        LetterKind kind,
        @Nullable String givenName,
        String hospital,
        Letterhead letterhead,
        Optional<Appointment> appointment,
        LocalDate by,
        LetterLanguage language) {}
