package org.espalier.cost;

import java.util.Objects;
import java.util.function.Supplier;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Makes what is kept of costs anew from the facts, one child a transaction: charges that follow from them, the limbs'
 * episodes and what is still to come. What agrees already is left as it is.
 */
@Component
class CostRenewal {

    static final String PURPOSE = "cost-renewal";

    private static final Logger LOG = LoggerFactory.getLogger(CostRenewal.class);

    private final JdbcTariffRepository tariffs;
    private final JdbcAccountRepository accounts;
    private final ChargeBook book;
    private final FactClaims claims;
    private final EpisodeReader episodes;
    private final JdbcEpisodeRepository kept;
    private final TransactionTemplate transactions;

    CostRenewal(
            JdbcTariffRepository tariffs,
            JdbcAccountRepository accounts,
            ChargeBook book,
            FactClaims claims,
            EpisodeReader episodes,
            JdbcEpisodeRepository kept,
            TransactionTemplate transactions) {
        this.tariffs = tariffs;
        this.accounts = accounts;
        this.book = book;
        this.claims = claims;
        this.episodes = episodes;
        this.kept = kept;
        this.transactions = transactions;
    }

    /** Every hospital that has set a tariff. */
    void renewAll() {
        tariffs.sites().forEach(this::renew);
    }

    /** Every child of a hospital; one of whom no sense can be made is told to the house and holds up nobody else. */
    void renew(SiteId site) {
        var children = as(site, () -> accounts.children(site));
        for (var child : children) {
            try {
                renew(site, child);
            } catch (IllegalArgumentException e) {
                LOG.error("The costs of child {} were not made anew", child.value(), e);
            }
        }
    }

    /** One child, whole or not at all; says how many charges were written. None of a child that has moved on. */
    int renew(SiteId site, ChildId child) {
        return as(site, () -> {
            if (!accounts.isHere(site, child)) {
                return 0;
            }
            int written = book.settle(child, site, line -> true, claims.all(child, site));
            kept.replace(site, child, episodes.of(child), episodes.expected(child));
            return written;
        });
    }

    private <T> T as(SiteId site, Supplier<T> work) {
        var caller = new Caller.SystemAtSite(site.value(), PURPOSE);
        return Objects.requireNonNull(Callers.callAs(caller, () -> transactions.execute(status -> work.get())));
    }
}
