package org.espalier.followup;

import java.util.Optional;

/**
 * A letter that may be wanted.
 *
 * @param refusal why it cannot be written now; empty when it can
 */
public record LetterOffer(LetterKind kind, Optional<LetterRefusal> refusal) {}
