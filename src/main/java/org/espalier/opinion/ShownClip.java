package org.espalier.opinion;

import java.time.Instant;
import java.util.UUID;
import org.espalier.film.ClipCopy;
import org.jspecify.annotations.Nullable;

/** A clip as it is shown: a copy without sound. */
public record ShownClip(UUID id, @Nullable Integer months, String title, ClipCopy copy, Instant addedAt) {}
