package org.espalier.stock;

import java.util.Comparator;
import java.util.List;
import org.espalier.access.SiteId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What to order, by what operations took. */
@Service
@Transactional
public class OrderService {

    private final StockOverviewService overview;

    OrderService(StockOverviewService overview) {
        this.overview = overview;
    }

    /** Every product that operations used in the last year, those that are least surely enough first. */
    public List<OrderProposal> proposals(SiteId site, OrderRule rule) {
        return overview.demand(site).stream()
                .map(demand -> OrderProposal.of(demand, rule))
                .sorted(Comparator.comparing(OrderProposal::sufficient))
                .toList();
    }
}
