package org.espalier.film;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.BlobRef;
import org.jspecify.annotations.Nullable;

/**
 * A photo of the legs or a short clip of the child walking.
 *
 * @param length of a clip; empty for a photo
 * @param by name of who kept it; null for the house itself
 * @param withdrawn why it is no longer shown; empty while it is
 */
public record ClinicalPicture(
        PictureId id,
        SiteId site,
        ChildId child,
        PictureKind kind,
        BlobRef bytes,
        Optional<Duration> length,
        LocalDate takenOn,
        Consent consent,
        @Nullable String by,
        Instant keptAt,
        Optional<String> withdrawn) {}
