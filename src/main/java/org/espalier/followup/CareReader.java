package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Component;

/** Gathers what the rules need to know of a child. */
@Component
class CareReader {

    private final JdbcCareRepository care;
    private final JdbcLimitsRepository limits;
    private final SiteService sites;

    CareReader(JdbcCareRepository care, JdbcLimitsRepository limits, SiteService sites) {
        this.care = care;
        this.limits = limits;
        this.sites = sites;
    }

    SiteId site(ChildId child) {
        return care.child(child).site();
    }

    CareFacts read(ChildId child, Optional<LocalDate> asked) {
        var row = care.child(child);
        var filmed = care.lastFilms(child);
        List<PlateFacts> plates = care.plates(child).stream()
                .map(plate -> watched(plate, row.since(), filmed))
                .toList();
        return new CareFacts(
                sites.today(row.site()),
                row.birth(),
                row.since(),
                row.lastSeen(),
                row.boneDisease(),
                row.tibiaVara(),
                plates,
                asked,
                limits.of(row.site()).waitMonths());
    }

    private static PlateFacts watched(GrowthPlate plate, LocalDate since, List<JdbcCareRepository.Filmed> filmed) {
        var last = filmed.stream()
                .filter(film -> film.side() == plate.side())
                .map(JdbcCareRepository.Filmed::on)
                .findFirst();
        return new PlateFacts(
                plate, Following.WATCHED, since, last, Optional.empty(), Optional.empty(), false, Optional.empty());
    }
}
