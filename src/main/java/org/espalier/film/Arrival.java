package org.espalier.film;

import java.time.Instant;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.film.FilmInspector.Aside;
import org.espalier.platform.BlobRef;

/** A film on the disk that is about to be written down. */
record Arrival(
        FilmId id,
        SiteId site,
        FilmKind kind,
        BlobRef bytes,
        String originalName,
        FilmTags tags,
        Optional<Aside> aside,
        Instant at) {

    Arrival keptAside(AsideReason reason, String detail) {
        return new Arrival(id, site, kind, bytes, originalName, tags, Optional.of(new Aside(reason, detail)), at);
    }
}
