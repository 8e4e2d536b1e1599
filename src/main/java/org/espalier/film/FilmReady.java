package org.espalier.film;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** A film's picture can be shown; published in the same transaction. */
public record FilmReady(FilmId film, SiteId site, Optional<ChildId> child) {}
