package org.espalier.film;

import java.time.Duration;
import org.espalier.platform.BlobRef;

/** A copy of a clip without sound and without what stood beside its picture; what is in the picture is as it was. */
public record ClipCopy(PictureKind kind, BlobRef bytes, Duration length) {}
