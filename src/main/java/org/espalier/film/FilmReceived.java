package org.espalier.film;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** A film was taken in; published in the same transaction. */
public record FilmReceived(FilmId film, SiteId site, Optional<ChildId> child) {}
