package org.espalier.stock;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps pieces for planned operations, and says which of them would be left short. */
@Service
@Transactional
public class ReservationService {

    private final JdbcReservationRepository reservations;
    private final JdbcStockOverviewRepository overview;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final Clock clock;

    ReservationService(
            JdbcReservationRepository reservations,
            JdbcStockOverviewRepository overview,
            SiteService sites,
            CurrentStaff currentStaff,
            Clock clock) {
        this.reservations = reservations;
        this.overview = overview;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.clock = clock;
    }

    /** Keeps what an operation needs, in place of what was kept for it before. */
    public void reserve(Reservation reservation) {
        var standing =
                open(reservation.site()).stream().anyMatch(one -> one.id().equals(reservation.id()));
        if (!standing) {
            reservations.end(reservation.holder(), currentStaff.id(), clock.instant());
        }
        reservations.add(reservation, currentStaff.id(), clock.instant());
    }

    /** Nothing is kept for the operation any more; false when nothing was. */
    public boolean end(UUID holder) {
        return reservations.end(holder, currentStaff.find().orElse(null), clock.instant());
    }

    /** What is kept, the first operation first. */
    public List<Reservation> open(SiteId site) {
        return reservations.open(site);
    }

    /** What each planned operation gets from what lies usable, and where it is left short. */
    public List<Coverage.Met> coverage(SiteId site) {
        var planned = reservations.open(site);
        var kinds = planned.stream()
                .flatMap(reservation -> reservation.needs().stream())
                .map(Need::kind)
                .collect(Collectors.toSet());
        return Coverage.of(planned, overview.supplies(site, sites.today(site), kinds));
    }
}
