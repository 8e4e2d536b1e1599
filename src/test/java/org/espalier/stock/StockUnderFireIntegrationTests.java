package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Eight writers on the same few shelves while their connections are cut: nothing is lost, doubled or below nothing. */
@IntegrationTest
class StockUnderFireIntegrationTests {

    private static final int WRITERS = 8;
    private static final int MOVEMENTS = 4_000;
    private static final StockHammer.Cuts CUTS = new StockHammer.Cuts(120, false);
    private static final int PIECES = 1_600;

    @Autowired
    StockHammer hammer;

    @Autowired
    TestStock test;

    @Autowired
    TestNetwork network;

    @Autowired
    StockService stock;

    @Test
    void balancesEqualTheMovementsAndNoneIsLostOrDoubled() throws Exception {
        var blows = hammer.strike(WRITERS, MOVEMENTS, CUTS, 1);
        assertThat(blows.cut()).as("connections were cut").isPositive();
        assertThat(blows.moved()).isNotEmpty();
        assertThat(blows.refused()).as("some shelf was empty at some time").isNotEmpty();
        var here = blows.stocked();
        assertThat(test.as(here, () -> stock.check(here.site()))).isEmpty();
        assertThat(written(here.site().value(), blows.moved()))
                .as("each acknowledged movement is there once, and besides the four arrivals no other")
                .isEqualTo(blows.moved().size())
                .isEqualTo(written(here.site().value()) - 4);
        assertThat(written(here.site().value(), blows.refused())).isZero();
        assertThat(network.owner()
                        .sql("select sum(quantity) || ' ' || (min(quantity) >= 0) from stock_balance where site_id = ?")
                        .param(here.site().value())
                        .query(String.class)
                        .single())
                .isEqualTo(PIECES + " true");
    }

    private int written(UUID site, List<UUID> movements) {
        return network.owner()
                .sql("select count(*) from stock_movement where from_site = ? and id = any(?)")
                .params(site, movements.toArray(UUID[]::new))
                .query(Integer.class)
                .single();
    }

    private int written(UUID site) {
        return network.owner()
                .sql("select count(*) from stock_movement where from_site = ?")
                .param(site)
                .query(Integer.class)
                .single();
    }
}
