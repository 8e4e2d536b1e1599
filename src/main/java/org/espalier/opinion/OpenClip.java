package org.espalier.opinion;

import java.nio.file.Path;

/** A clip that its holder may play. */
public record OpenClip(Path file, String mediaType) {}
