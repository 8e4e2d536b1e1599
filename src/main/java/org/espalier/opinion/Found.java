package org.espalier.opinion;

import java.time.Instant;

/** A place in the caller's own threads where the words looked for stand. */
public record Found(ThreadId thread, String author, String text, Instant at) {}
