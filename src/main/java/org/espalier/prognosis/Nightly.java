package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.platform.Night;
import org.espalier.platform.NightWork;
import org.espalier.platform.Nights;
import org.espalier.prognosis.JdbcNightRepository.Marked;
import org.espalier.science.forecast.CentreRates;
import org.springframework.stereotype.Component;

/**
 * A night's forecasts: each site learns from its own limbs, then the forecasts of children whose facts changed are made
 * anew.
 */
@Component
class Nightly implements NightWork {

    static final String PURPOSE = "forecast-nightly";

    private final JdbcNightRepository children;
    private final Renewal renewal;
    private final RatesInUse rates;
    private final RateLearning learning;
    private final SiteService sites;
    private final Nights nights;

    Nightly(
            JdbcNightRepository children,
            Renewal renewal,
            RatesInUse rates,
            RateLearning learning,
            SiteService sites,
            Nights nights) {
        this.children = children;
        this.renewal = renewal;
        this.rates = rates;
        this.learning = learning;
        this.sites = sites;
        this.nights = nights;
    }

    void run() {
        nights.run(this);
    }

    Night run(SiteId site) {
        return nights.run(this, site.value());
    }

    Night step(SiteId site) {
        return nights.step(this, site.value());
    }

    @Override
    public String name() {
        return PURPOSE;
    }

    @Override
    public List<UUID> sites() {
        return children.sites().stream().map(SiteId::value).toList();
    }

    @Override
    public LocalDate today(UUID site) {
        return sites.today(new SiteId(site));
    }

    @Override
    public void begin(UUID site) {
        learning.learn(new SiteId(site));
    }

    @Override
    public Chunk next(UUID id, Night before) {
        var site = new SiteId(id);
        var used = rates.of(site);
        List<Marked> next = children.next(site, before.after(), CHUNK, mark(used));
        List<Marked> changed = next.stream().filter(Marked::changed).toList();
        List<Marked> toRenew = changed.stream().filter(Marked::treated).toList();
        toRenew.forEach(one -> renewal.renew(site, one.child(), used));
        children.mark(site, changed);
        return new Chunk(next.stream().map(one -> one.child().value()).toList(), toRenew.size());
    }

    private static String mark(UsedRates used) {
        return CentreRates.VERSION + ":"
                + used.learnt().map(one -> one.id().toString()).orElse("published");
    }
}
