package org.espalier.opinion;

import java.util.UUID;
import org.espalier.reading.Marks;

/** The caller's own blind reading in the making. */
public record BlindDraft(UUID id, long revision, Marks marks) {}
