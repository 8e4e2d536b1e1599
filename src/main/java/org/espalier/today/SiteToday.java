package org.espalier.today;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.espalier.access.Site;

/**
 * What waits at one hospital.
 *
 * @param care what waits in the care of children
 * @param toRead the film that was taken first comes first; empty for those who do not read
 * @param drafts the one touched last comes first
 * @param withoutFilm children never filmed come first, then the longest without a film
 */
public record SiteToday(
        Site site,
        LocalDate today,
        CareToday care,
        Listed<FilmToRead> toRead,
        List<OpenDraft> drafts,
        Tray tray,
        Listed<WithoutFilm> withoutFilm) {

    public ZoneId zone() {
        return site.zone();
    }

    public boolean isEmpty() {
        return care.isEmpty() && toRead.isEmpty() && drafts.isEmpty() && tray.isEmpty() && withoutFilm.isEmpty();
    }
}
