package org.espalier.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.cost.TestCost.number;
import static org.espalier.cost.TestCost.tariff;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.science.quantity.Side;
import org.espalier.stock.UnitCost;
import org.junit.jupiter.api.Test;

/** Money worked by hand, across a change of tariff: every figure below was reckoned on paper. */
class PricingTests {

    private static final LocalDate OLD = LocalDate.of(2025, 1, 1);
    private static final LocalDate CHANGE = LocalDate.of(2026, 1, 1);
    private static final UUID FACT = new UUID(0, 7);

    private final TariffBook book = new TariffBook(List.of(
            until(TestCost.price(TariffItem.FRAME_DAY, "14.25", OLD), CHANGE),
            tariff(TariffItem.FRAME_DAY, "15.10", CHANGE),
            until(TestCost.price(TariffItem.VISIT, "80", OLD), CHANGE),
            tariff(TariffItem.VISIT, "85", CHANGE),
            tariff(TestCost.priceFor("Fund", TariffItem.VISIT, "70.50", OLD), Optional.empty()),
            tariff(TariffItem.THEATRE_MINUTE, "11.3333", OLD),
            tariff(TariffItem.OVERHEAD, "12.5", OLD),
            tariff(TariffItem.OVERHEAD_IMPLANT, "4", OLD)));

    private static Tariff until(TariffData data, LocalDate day) {
        return tariff(data, Optional.of(day));
    }

    private List<ChargeLine> price(String payer, TariffItem item, LocalDate on, String quantity) {
        var claim = Claim.of(ChargeSource.PROCEDURE, FACT, ChargeRule.EACH_ACT, item, Side.RIGHT, on, number(quantity));
        return new Pricing(book, payer).price(claim);
    }

    private static Money total(List<ChargeLine> lines) {
        return lines.stream()
                .map(line -> line.priced().orElseThrow().total())
                .reduce(Money::plus)
                .orElseThrow();
    }

    /**
     * 20 December to 10 January: 12 days at 14.25 = 171.00, 9 days at 15.10 = 135.90; 12.5 % on each, 21.38 and 16.99.
     */
    @Test
    void cutsTheDaysOfAFrameWhereTheTariffChanges() {
        var lines = price("", TariffItem.FRAME_DAY, LocalDate.of(2025, 12, 20), "21");
        assertThat(lines).extracting(ChargeLine::quantity).containsExactly(number("12.00"), number("9.00"));
        assertThat(lines)
                .extracting(ChargeLine::until)
                .containsExactly(LocalDate.of(2025, 12, 31), LocalDate.of(2026, 1, 9));
        assertThat(lines)
                .extracting(line -> line.priced().orElseThrow().amount())
                .containsExactly(Money.of("171.00", "EUR"), Money.of("135.90", "EUR"));
        assertThat(lines)
                .extracting(line -> line.priced().orElseThrow().overhead())
                .containsExactly(Money.of("21.38", "EUR"), Money.of("16.99", "EUR"));
        assertThat(total(lines)).isEqualTo(Money.of("345.27", "EUR"));
    }

    @Test
    void theLastDayOfTheOldTariffAndTheFirstOfTheNewOneHaveTheirOwnPrice() {
        assertThat(price("", TariffItem.VISIT, CHANGE.minusDays(1), "1")
                        .getFirst()
                        .priced()
                        .orElseThrow()
                        .amount())
                .isEqualTo(Money.of("80", "EUR"));
        assertThat(price("", TariffItem.VISIT, CHANGE, "1")
                        .getFirst()
                        .priced()
                        .orElseThrow()
                        .amount())
                .isEqualTo(Money.of("85", "EUR"));
    }

    /** 45 minutes at 11.3333 = 509.9985, rounded once to 510.00; 12.5 % of that is 63.75. */
    @Test
    void roundsTheAmountOnceAndTheShareFromTheRoundedAmount() {
        var priced = price("", TariffItem.THEATRE_MINUTE, CHANGE, "45")
                .getFirst()
                .priced()
                .orElseThrow();
        assertThat(priced.amount()).isEqualTo(Money.of("510.00", "EUR"));
        assertThat(priced.overhead()).isEqualTo(Money.of("63.75", "EUR"));
    }

    /** Half a night: 7.13 of 14.25, for 7.125 is rounded up; 12.5 % of 7.13 is 0.89. */
    @Test
    void whatIsLeftOfADayStandsOnTheLastOne() {
        var lines = price("", TariffItem.FRAME_DAY, CHANGE.minusDays(2), "2.5");
        assertThat(lines).extracting(ChargeLine::quantity).containsExactly(number("2.00"), number("0.50"));
        assertThat(price("", TariffItem.FRAME_DAY, OLD, "0.5")
                        .getFirst()
                        .priced()
                        .orElseThrow()
                        .total())
                .isEqualTo(Money.of("8.02", "EUR"));
    }

    @Test
    void aPayersOwnPriceGoesBeforeTheCommonOne() {
        assertThat(price("Fund", TariffItem.VISIT, CHANGE, "1")
                        .getFirst()
                        .priced()
                        .orElseThrow()
                        .amount())
                .isEqualTo(Money.of("70.50", "EUR"));
        assertThat(price("Other", TariffItem.VISIT, CHANGE, "1")
                        .getFirst()
                        .priced()
                        .orElseThrow()
                        .amount())
                .isEqualTo(Money.of("85", "EUR"));
    }

    @Test
    void withoutATariffItIsWrittenWithoutAPriceAndNotForNothing() {
        assertThat(price("", TariffItem.MRI, CHANGE, "1")).singleElement().satisfies(line -> {
            assertThat(line.priced()).isEmpty();
            assertThat(line.tariff()).isEmpty();
        });
        assertThat(price("", TariffItem.VISIT, OLD.minusDays(1), "1").getFirst().priced())
                .isEmpty();
    }

    /** 3 pieces at 12.40 by their lot = 37.20, in the currency they were bought in; 4 % on implants = 1.49. */
    @Test
    void whatALotCostGoesBeforeAnyTariff() {
        var claim = new Claim(
                ChargeSource.PROCEDURE,
                FACT,
                ChargeRule.LOT_COST,
                TariffItem.IMPLANT,
                Side.RIGHT,
                CHANGE,
                number("3"),
                Optional.of(new UnitCost(number("12.40"), Currency.getInstance("CHF"))),
                Optional.of(FACT));
        var line = new Pricing(book, "").price(claim).getFirst();
        assertThat(line.priced().orElseThrow().amount()).isEqualTo(Money.of("37.20", "CHF"));
        assertThat(line.priced().orElseThrow().overhead()).isEqualTo(Money.of("1.49", "CHF"));
    }

    /** 2 visits at 85 and 90 minutes at 11.3333: 170.00 + 1 020.00 (1 019.997 rounded), overheads 21.25 + 127.50. */
    @Test
    void anEstimateSaysWhatIsMissing() {
        var wanted = Quantities.NONE
                .with(TariffItem.VISIT, number("2"))
                .with(TariffItem.THEATRE_MINUTE, number("90"))
                .with(TariffItem.MRI, number("1"));
        var estimate = CostEstimate.of(book, CHANGE, wanted.of());
        assertThat(estimate.direct()).contains(Money.of("1190.00", "EUR"));
        assertThat(estimate.overhead()).contains(Money.of("148.75", "EUR"));
        assertThat(estimate.total()).contains(Money.of("1338.75", "EUR"));
        assertThat(estimate.missing()).containsExactly(TariffItem.MRI);
    }
}
