package org.espalier.prognosis;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The rates a centre forecasts by: its own, learnt from its limbs, unless it chose the published ones. */
@Service
@Transactional
public class RatesService {

    /** The longest reason that is kept. */
    public static final int REASON_LENGTH = 400;

    private static final int SHORTEST_REASON = 3;
    private static final int NIGHTS_SHOWN = 12;

    private final JdbcRatesRepository rates;
    private final RatesInUse inUse;
    private final CurrentStaff staff;
    private final Clock clock;

    RatesService(JdbcRatesRepository rates, RatesInUse inUse, CurrentStaff staff, Clock clock) {
        this.rates = rates;
        this.inUse = inUse;
        this.staff = staff;
        this.clock = clock;
    }

    /** What the site learnt, what it chose, and what holds. */
    public RatesOfSite of(SiteId site) {
        return new RatesOfSite(inUse.of(site), rates.learnt(site, NIGHTS_SHOWN), rates.choices(site));
    }

    /** Chooses by which rates the site forecasts from now on; what was forecast stays as it was given. */
    public void choose(SiteId site, RateSource source, String reason) {
        if (!staff.has(Role.SURGEON, site)) {
            throw new AccessDeniedException("a surgeon of the site chooses its rates");
        }
        var tidy = reason.strip();
        if (tidy.length() < SHORTEST_REASON || tidy.length() > REASON_LENGTH) {
            throw new IllegalArgumentException("A choice is made for a reason of 3 to 400 characters");
        }
        rates.choose(site, source, tidy, staff.id(), clock.instant().truncatedTo(ChronoUnit.MICROS));
    }
}
