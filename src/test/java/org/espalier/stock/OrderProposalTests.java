package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * The case of eight screws on average, as two children with four each: a stock of 13 suffices in 85.7 %, where counting
 * single screws promises 96.6 % (worked by hand: P(at most three operations of mean two) = e⁻² (1 + 2 + 2 + 8/6) =
 * 0.8571).
 */
class OrderProposalTests {

    private static final Product SCREW =
            new Product(new ProductId(UUID.randomUUID()), 1, ProductData.of(ProductKind.SCREW, "Invented", "S"));

    @Test
    void knowsThatScrewsGoInFours() {
        var rule = new OrderRule(73, 0.9);
        var proposal = OrderProposal.of(new Demand(SCREW, Map.of(4, 10), 12, 1), rule);
        assertThat(proposal.inLeadTime()).isCloseTo(2, within(1e-12));
        assertThat(proposal.mean()).isCloseTo(8, within(1e-12));
        assertThat(proposal.sufficient()).isCloseTo(0.8571, within(5e-5));
        assertThat(proposal.level()).as("four operations: 0.9473").isEqualTo(16);
        assertThat(proposal.order()).isEqualTo(3);
    }

    @Test
    void ordersNothingWhenThereIsEnough() {
        assertThat(OrderProposal.of(new Demand(SCREW, Map.of(4, 10), 40, 0), OrderRule.DEFAULT)
                        .order())
                .isZero();
    }

    @Test
    void refusesARuleThatPromisesNothingOrEverything() {
        assertThatThrownBy(() -> new OrderRule(21, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new OrderRule(0, 0.95)).isInstanceOf(IllegalArgumentException.class);
    }
}
