package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * An attempt to reach a family; never changed.
 *
 * @param consentOf who agreed, for ways that need it
 * @param next what is to be done next, and when
 */
public record Attempt(
        LocalDate on,
        Channel channel,
        AttemptOutcome outcome,
        Optional<String> consentOf,
        Optional<String> note,
        Optional<Next> next) {

    /** What is to be done next. */
    public record Next(String step, Optional<LocalDate> on) {}

    public Attempt {
        if (channel.needsConsent() && consentOf.filter(who -> !who.isBlank()).isEmpty()) {
            throw new IllegalArgumentException("nobody agreed to " + channel);
        }
    }
}
