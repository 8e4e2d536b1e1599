package org.espalier.film;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * A film was given to a child, moved to another or laid back in the tray; published in the same transaction.
 *
 * @param before whose it was until now
 * @param now whose it is from now on
 */
public record FilmAssigned(FilmId film, SiteId site, Optional<ChildId> before, Optional<ChildId> now) {}
