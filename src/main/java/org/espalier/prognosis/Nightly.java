package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.platform.Night;
import org.espalier.platform.NightWork;
import org.espalier.platform.Nights;
import org.espalier.prognosis.JdbcNightRepository.Marked;
import org.espalier.science.forecast.CentreRates;
import org.springframework.stereotype.Component;

/**
 * A night's forecasts: those of children whose facts changed are made anew; then each site learns from its own limbs as
 * they are by now, and where that gave other rates the forecasts are made by them the same night.
 */
@Component
class Nightly {

    static final String PURPOSE = "forecast-nightly";

    static final int CHUNK = NightWork.CHUNK;

    private static final String BY_NEW_RATES = "forecast-by-new-rates";

    private final JdbcNightRepository children;
    private final Renewal renewal;
    private final RatesInUse rates;
    private final SiteService sites;
    private final Nights nights;
    private final NightWork byFacts;
    private final NightWork byNewRates;

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
        this.sites = sites;
        this.nights = nights;
        byFacts = new Pass(PURPOSE, site -> {});
        byNewRates = new Pass(BY_NEW_RATES, learning::learn);
    }

    void run() {
        nights.run(byFacts);
        nights.run(byNewRates);
    }

    /** One site's night; how far it came by facts that changed. */
    Night run(SiteId site) {
        var night = nights.run(byFacts, site.value());
        nights.run(byNewRates, site.value());
        return night;
    }

    Night step(SiteId site) {
        return nights.step(byFacts, site.value());
    }

    /** All children of a site, of whom those are renewed whose mark is another by now. */
    private final class Pass implements NightWork {

        private final String name;
        private final Consumer<SiteId> first;

        private Pass(String name, Consumer<SiteId> first) {
            this.name = name;
            this.first = first;
        }

        @Override
        public String name() {
            return name;
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
            first.accept(new SiteId(site));
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
    }

    private static String mark(UsedRates used) {
        return CentreRates.VERSION + ":"
                + used.learnt().map(one -> one.id().toString()).orElse("published");
    }
}
